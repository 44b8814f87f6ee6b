import { expanded } from '../../formula/outcome';
import { length } from '../../quantity/kinds';
import { formatValue } from '../../quantity/format';
import type { Instruction, Movement } from '../../engine/calculator';
import { ofPrint } from './of-print';
import { suspicion } from './suspect';
import { AXES, stepsText, type Ask } from './asked';

/** Above this a number would paper over a wrong part. Common practice, no source. */
const FUDGE = 0.01;
/** Longest length worth proposing, m. */
const LONGEST = 3;

const setTo = (ctx: Ask, symbol: 'S_c' | 'S_n'): Movement => {
  const change = ctx.number(symbol) - ctx.number('S_0');
  const direction = change > 0 ? 'raise' : 'lower';
  return { part: `steps per length, ${AXES[ctx.choice('axis')]}`, direction, amount: Math.abs(change) };
};

/** `raise` or `lower`, from what is set to what is wanted. */
const change = (ctx: Ask, symbol: 'S_c' | 'S_n'): string =>
  `${setTo(ctx, symbol).direction} the steps of ${AXES[ctx.choice('axis')]} from ${stepsText(ctx, 'S_0')} to ${stepsText(ctx, symbol)}`;

/** By counting alone. */
function byParts(ctx: Ask): Instruction {
  const name = AXES[ctx.choice('axis')];
  const counted = stepsText(ctx, 'S_c');
  const isFeed = ctx.choice('axis') === 'feed';
  const then = isFeed
    ? 'Then measure what is fed: how deep the gear bites is not known beforehand.'
    : 'Then command the longest move there is and measure it: it must agree.';
  if (ctx.lacking('q').length > 0) {
    return { headline: `${name}: the parts make ${counted}. Compare that with what is set.`, steps: [then] };
  }
  const state = ctx.check('q');
  if (state === 'within') {
    return { headline: `Leave the steps of ${name}: ${stepsText(ctx, 'S_0')} is what the parts make.`, steps: [then] };
  }
  if (state === 'beyond') {
    const clue = suspicion(ctx, 1 + ctx.number('q'), 0, 'set');
    return {
      headline: `The number set is not what the parts make: ${change(ctx, 'S_c')}.`,
      steps: [
        'First count again: teeth of the pulley, pitch or lead, and the microsteps that the driver is switched to.',
        ...clue,
        then,
      ],
      movements: [setTo(ctx, 'S_c')],
    };
  }
  return {
    headline: `Leave the steps of ${name}: counting cannot tell whether ${stepsText(ctx, 'S_0')} is right. Measure the travel.`,
    steps: [then],
    measureAgain: true,
  };
}

/** How long the test would have to be, or that no length will do. SI. */
function longer(ctx: Ask, commanded: number): string {
  const error = ctx.known('c');
  if (!error) return 'Measure over a longer length.';
  const doubt = expanded(error) * commanded;
  const margin = Math.abs(Math.abs(error.value) - ctx.number('e_lim'));
  // A tenth more, so that the doubt does fit in.
  const needed = margin > 0 ? Math.ceil((1.1 * doubt) / margin / 0.01) * 0.01 : Infinity;
  if (needed > LONGEST) {
    return 'The error stands so near the limit that no length of test will settle it: leaving the number and setting the new one are equally right.';
  }
  const text = formatValue(Number(needed.toFixed(3)), 0, length.mm.unit, { mark: ctx.mark });
  const lead = error.budget[0]?.symbol;
  const slack = lead === 'b' ? ' Or take up the slack first: the lost motion is the largest doubt here.' : '';
  return `With this tool the test has to be about ${text} long; a finer tool makes do with less.${slack}`;
}

const backwards = (what: string): Instruction => ({
  headline: `Measure again: ${what}`,
  steps: ['The two readings are swapped, or the move went the other way.'],
  measureAgain: true,
});

/** The drive’s own travel against what it was told. */
function byTravel(ctx: Ask): Instruction {
  const name = AXES[ctx.choice('axis')];
  if (ctx.number('l_d') <= 0) return backwards('the place after the move must be farther from the stop than before.');
  const way = ctx.number('c') > 0 ? 'too far' : 'too short';
  const state = ctx.check('c');
  const setIsCounted = ctx.check('q') === 'within';
  const asked = `The travel alone would ask for ${stepsText(ctx, 'S_n')}, the parts make ${stepsText(ctx, 'S_c')}.`;
  if (state === 'too close' || state === 'none') {
    return {
      headline: `Leave the steps of ${name} and measure over a longer length: the correction is smaller than its doubt allows to tell.`,
      steps: [longer(ctx, ctx.number('l_c')), asked],
      measureAgain: true,
    };
  }
  if (state === 'within' && setIsCounted) {
    return {
      headline: `Leave the steps of ${name}: it moves what it is told, and the parts make the same number.`,
      steps: ['If pieces still come out small, it is the plastic: scale the piece, not the drive.'],
    };
  }
  if (state === 'within') {
    return {
      headline: `Leave the steps of ${name}: it moves what it is told. Correct what is entered here about the parts.`,
      steps: [
        `Set is ${stepsText(ctx, 'S_0')}, but the parts as entered would make ${stepsText(ctx, 'S_c')}.`,
        ...suspicion(ctx, 1 + ctx.number('q'), 0, 'entered'),
      ],
    };
  }
  return wrongTravel(ctx, name, way, asked, setIsCounted);
}

/** It surely moves otherwise than told. */
function wrongTravel(ctx: Ask, name: string, way: string, asked: string, setIsCounted: boolean): Instruction {
  const by = ctx.text('c', { magnitude: true });
  const found = ctx.known('q_n');
  const apart = Math.abs(ctx.number('q_n'));
  const agree = apart <= ctx.number('e_lim') + (found ? expanded(found) : 0);
  if (agree && !setIsCounted) {
    return {
      headline: `${name} moves ${by} ${way}: ${change(ctx, 'S_c')}.`,
      steps: ['Count and travel agree, so take the counted number: it carries no doubt of the tool.', asked],
      movements: [setTo(ctx, 'S_c')],
    };
  }
  if (apart > FUDGE) {
    return {
      headline: `${name} moves ${by} ${way}, and no belt or screw stretches that much: find the part that is other than counted before any number is changed.`,
      steps: [
        asked,
        ...suspicion(ctx, 1 / (1 + ctx.number('q_n')), found ? expanded(found) : 0, 'moved'),
        'Else look for a grub screw that slips, a belt that jumps teeth, a motor that loses steps: the error then differs from test to test.',
      ],
      movements: [],
    };
  }
  return {
    headline: `${name} moves ${by} ${way}: ${change(ctx, 'S_n')}.`,
    steps: [
      ctx.choice('axis') === 'z'
        ? `The screw then counts as one of ${ctx.text('P_e')} lead: measure at two places along it before believing that.`
        : `The belt then counts as one of ${ctx.text('p_e')} pitch. Set its tension first: tightening lengthens the pitch.`,
      'Repeat the test in the other direction and at another place: only an error that stays is one of the steps.',
      asked,
    ],
    movements: [setTo(ctx, 'S_n')],
  };
}

/** What slip at print speed says, where it was measured. */
function slipWords(ctx: Ask): string[] {
  const slip = ctx.known('s_f');
  if (!slip) return ['Feed once more at the flow you print with: what is missing then is slip, no matter of steps.'];
  if (slip.low > ctx.number('e_lim')) {
    return [
      `At print speed another ${ctx.text('s_f')} is missing: that is slip under back pressure. Print slower or hotter, clear the nozzle, set the idler’s pressure; leave the steps out of it.`,
    ];
  }
  return ['At print speed no more is missing than this test can see.'];
}

/** Filament fed against commanded. */
function byFeed(ctx: Ask): Instruction {
  if (ctx.number('l_d') <= 0) return backwards('the mark must come nearer to the inlet by feeding.');
  const state = ctx.check('c');
  const slip = slipWords(ctx);
  if (state === 'within') {
    return { headline: 'Leave the steps of the filament feed: it feeds what it is told.', steps: slip };
  }
  if (state === 'beyond') {
    const little = ctx.number('c') < 0;
    const far = Math.abs(ctx.number('c')) > 0.2;
    return {
      headline: `The feed gives ${ctx.text('c', { magnitude: true })} too ${little ? 'little' : 'much'}: ${change(ctx, 'S_n')}.`,
      steps: [
        `The gear then counts as one of ${ctx.text('d_e')} where it grips.`,
        ...(far
          ? [
              'That is far: look at the gear ratio and the microsteps entered before you set it, and for ground-down filament.',
            ]
          : ['Brush the gear’s teeth clean and repeat once: filament that was ground down feeds too little.']),
        ...slip,
      ],
      movements: [setTo(ctx, 'S_n')],
    };
  }
  return {
    headline:
      'Leave the steps of the filament feed and feed a longer piece: the correction is smaller than its doubt allows to tell.',
    steps: [longer(ctx, ctx.number('l_f')), ...slip],
    measureAgain: true,
  };
}

/** What to set, or what to leave alone, for every way of going about it. */
export function instruct(ctx: Ask): Instruction {
  const isFeed = ctx.choice('axis') === 'feed';
  const by = isFeed ? ctx.choice('fed') : ctx.choice('by');
  if (by === 'parts') return byParts(ctx);
  // Asked first, so that a missing value is named.
  ctx.number('S_0');
  if (by === 'print') return ofPrint(ctx);
  ctx.number('c');
  return isFeed ? byFeed(ctx) : byTravel(ctx);
}
