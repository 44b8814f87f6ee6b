import { expanded } from '../../formula/outcome';
import { formatNumber, formatValue } from '../../quantity/format';
import { acceleration, length, speed } from '../../quantity/kinds';
import { fromSi, toSi, type Measure } from '../../quantity/unit';
import type { Context, Instruction, Movement } from '../../engine/calculator';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

type Results = (typeof formulas)[number]['text'] extends infer T
  ? T extends `${infer S} =${string}`
    ? S
    : never
  : never;
type Ask = Context<Results | keyof typeof inputs, typeof choices>;

/** Two frequencies this near are taken for the same, whatever their doubt. Common practice, no source. */
const ALIKE = 0.15;

/** What a set value is worth giving to: two digits, rounded to the quiet side. */
function quietly(x: number, round: (y: number) => number): number {
  const step = 10 ** (Math.floor(Math.log10(x)) - 1);
  // A value that has two digits already stays, whatever a float makes of it.
  return round(Number((x / step).toPrecision(9))) * step;
}

const MEASURES = { a_s: acceleration.mm_s2, v_m: speed.mm_s } as const;

/** "620 mm/s²": at most this. */
function most(ctx: Ask, symbol: keyof typeof MEASURES): string {
  const { unit }: Measure = MEASURES[symbol];
  const shown = quietly(fromSi(ctx.number(symbol), unit), Math.floor);
  return formatValue(toSi(Number(shown.toPrecision(6)), unit), 0, unit, { mark: ctx.mark });
}

/** Factor to stiffen by, to two digits, rounded up. */
const times = (ctx: Ask): string => formatNumber(quietly(ctx.number('r_k'), Math.ceil), 2, ctx.mark);

/** Length of the ramp, to two digits. */
const rampText = (ctx: Ask): string => {
  const { unit } = length.mm;
  const shown = Number(fromSi(ctx.number('l_r'), unit).toPrecision(2));
  return formatValue(toSi(shown, unit), 0, unit, { mark: ctx.mark });
};

type Fit = 'fits' | 'softer' | 'stiffer' | undefined;

/** Whether the ripples fit a part’s frequency; `softer` where they come from something softer than it. */
function fit(ctx: Ask, symbol: 'r_b' | 'r_f'): Fit {
  const share = ctx.known(symbol);
  if (!share) return undefined;
  if (Math.abs(share.value - 1) <= Math.max(expanded(share), ALIKE)) return 'fits';
  return share.value < 1 ? 'softer' : 'stiffer';
}

/** Which part swings, as far as the frequencies tell, and what stiffens it. */
function culprit(ctx: Ask): string[] {
  const [belt, frame] = [fit(ctx, 'r_b'), fit(ctx, 'r_f')];
  const heard = `The ripples are ${ctx.text('f')}`;
  const beltWords = belt === undefined ? '' : `the mass on its belt alone would ring at ${ctx.text('f_b')}`;
  const frameWords = frame === undefined ? '' : `the frame at ${ctx.text('f_f')}`;
  const compared = [beltWords, frameWords].filter((text) => text !== '').join(', ');
  const said = compared === '' ? `${heard}.` : `${heard}; ${compared}.`;
  const onBelt =
    'Belt: see that it is tight enough (Belt tension), then shorten it, or take a wider one or one with steel cord.';
  const onFrame =
    'Frame: screw its corners tight, brace it with a diagonal or a panel, stand it on something heavy that does not rock.';
  if (belt === 'fits' && frame === 'fits')
    return [
      said,
      'Both fit. Brace the frame first: if the ripples then move closer together, it was the frame.',
      onFrame,
      onBelt,
    ];
  if (frame === 'fits') return [said, onFrame];
  if (belt === 'fits') return [said, onBelt];
  if (belt === 'softer' || frame === 'softer') {
    const than = belt === 'softer' ? 'the belt' : 'the frame';
    const rest =
      frame === undefined
        ? ', or the frame on its table. Pull the frame with a luggage scale and enter what it gives, to clear it or convict it.'
        : '.';
    return [
      said,
      `Something softer than ${than} swings: a slack belt of which one strand hangs loose, wheels without preload (Wheel preload), a motor or idler bracket${rest}`,
    ];
  }
  if (belt === 'stiffer' || frame === 'stiffer') {
    return [
      said,
      'What swings is stiffer or lighter than that: look at small parts on the carriage, such as a fan, a cable loop, a hot end that can be wagged by hand.',
    ];
  }
  return [said, onFrame, onBelt];
}

/** Quiet ramps, damping, corner: what else is known. */
function besides(ctx: Ask): string[] {
  const said: string[] = [];
  const next =
    (ctx.known('k_a')?.value ?? 1) > 1
      ? `; the next below the present one is ${ctx.text('a_k')}, for ${ctx.number('k_a')} of them`
      : '';
  said.push(
    `A ramp from rest that lasts whole swings cancels its own ripples: ${ctx.text('a_1')} lasts one at this speed, half of it two, a third three${next}.`,
  );
  if (ctx.known('zeta')) {
    said.push(
      `Ripples are down to a tenth after ${ctx.text('n_10')} of them, ${ctx.text('l_10')} of wall (damping ${ctx.text('zeta')} of critical).`,
    );
  }
  if (ctx.choice('corner') === 'rest') {
    said.push(
      `If the machine keeps a speed through corners, more than ${most(ctx, 'v_m')} of it rings as high by itself.`,
    );
  }
  return said;
}

/** The reading does not hold as one of swinging: what to do first. */
function doubtful(ctx: Ask): Instruction | undefined {
  const measureAgain = true;
  if (ctx.check('x_0') !== 'within') {
    return {
      headline: `Leave the acceleration and measure again: the ramp up to ${ctx.text('v')} takes ${rampText(ctx)}, and counting began inside it, or nearly.`,
      steps: [
        'In the ramp the nozzle is slower than the wall’s speed, so the ripples there stand closer together.',
        'Begin to count farther from the corner. Where the ripples have died away by then, print the wall slower: at half the speed the ramp is a quarter as long.',
      ],
      measureAgain,
    };
  }
  if (ctx.choice('test') === 'two') {
    if (ctx.check('kappa') === 'within') return undefined;
    if (ctx.check('kappa') === 'beyond') {
      return {
        headline:
          'Leave the acceleration: these ripples keep their spacing at another speed, so a part of the drive makes them.',
        steps: [
          `${ctx.text('lambda')} at ${ctx.text('v')}, ${ctx.text('lambda_2')} at ${ctx.text('v_2')}: what swings would spread with the speed.`,
          'Give the spacing to “Ridge period”: it compares it with belt teeth, motor steps, pulley and idlers.',
          'A tooth’s spacing: teeth that run over a smooth idler, a belt too tight, a pulley of another profile. Four full steps: motor current, or the driver’s microsteps.',
        ],
      };
    }
    return {
      headline:
        'Leave the acceleration: whether the ripples spread with the speed is too close to call. Print at speeds farther apart.',
      steps: ['One at least twice as fast as the other, and measure over more ripples.'],
      measureAgain,
    };
  }
  const like = [
    ...(ctx.check('g_p') === 'within' ? [] : [`the belt’s teeth (${ctx.text('p')})`]),
    ...(ctx.check('g_s') === 'within' ? [] : [`four full steps of the motor (${ctx.text('x_f')})`]),
  ];
  if (like.length === 0) return undefined;
  return {
    headline: `Leave the acceleration for now: the ripples are spaced like ${like.join(' and like ')}, which makes such ripples without swinging.`,
    steps: [
      'Print the same wall at half the speed, choose “two speeds” above and enter both spacings. If the spacing halves, it swings; if it stays, it is that part.',
      'Teeth and steps do not die away along the wall; swinging does.',
    ],
    measureAgain,
  };
}

/** What a corner’s own speed does, where it is known and surely or perhaps too much. */
function corner(ctx: Ask): { readonly said: string; readonly movement: Movement } | undefined {
  if (ctx.choice('corner') !== 'kept' || ctx.check('x_c') === 'within') return undefined;
  return {
    said: `The ${ctx.text('v_c')} kept through the corner ring ${ctx.text('x_c')} high by themselves: lower it to ${most(ctx, 'v_m')}; no acceleration mends that.`,
    movement: {
      part: 'corner speed',
      direction: 'down',
      amount: Math.max(0, ctx.number('v_c') - ctx.number('v_m')),
    },
  };
}

function tooMuch(ctx: Ask): Instruction {
  const rounded = corner(ctx);
  const between = ctx.number('a') <= ctx.number('a_q');
  return {
    headline: `Lower the acceleration from ${ctx.text('a')} to ${most(ctx, 'a_s')}, or make what swings ${times(ctx)} times as stiff or that much lighter.`,
    steps: [
      `At ${ctx.text('a')} the ripples may be ${ctx.text('X')} high; ${ctx.text('x_tol')} is allowed.`,
      between
        ? `Up to ${ctx.text('a_q')} it depends on the ramp: where acceleration sets in softly, the present one may pass.`
        : `Above ${ctx.text('a_q')} even a soft start bends it too far.`,
      ...culprit(ctx),
      ...(rounded ? [rounded.said] : []),
      ...besides(ctx),
    ],
    movements: [
      { part: 'acceleration', direction: 'down', amount: ctx.number('a') - ctx.number('a_s') },
      ...(rounded ? [rounded.movement] : []),
    ],
  };
}

/** What to turn down, stiffen or leave alone. */
export function instruct(ctx: Ask): Instruction {
  // Asked first, so that a missing value is named.
  ctx.number('a_s');
  ctx.number('l_r');
  if (ctx.choice('test') === 'two') ctx.number('kappa');
  if (ctx.choice('corner') === 'kept') ctx.number('x_c');
  const first = doubtful(ctx);
  if (first) return first;
  if (ctx.check('a') === 'beyond') return tooMuch(ctx);
  if (ctx.check('a') !== 'within') {
    return {
      headline: 'Leave the acceleration and measure over more ripples: whether it is too high is too close to call.',
      steps: [
        `It is ${ctx.text('a')}, and ${ctx.text('a_s')} keeps the ripples at ${ctx.text('x_tol')}. Every share of error in spacing or speed counts double.`,
        ...culprit(ctx),
      ],
      measureAgain: true,
    };
  }
  const rounded = corner(ctx);
  if (rounded && ctx.check('x_c') === 'beyond') {
    return {
      headline: `Leave the acceleration, and lower the speed kept through corners from ${ctx.text('v_c')} to ${most(ctx, 'v_m')}.`,
      steps: [rounded.said, ...culprit(ctx), ...besides(ctx)],
      movements: [rounded.movement],
    };
  }
  if (rounded) {
    return {
      headline: 'Leave the acceleration; whether the speed kept through corners is too high is too close to call.',
      steps: [`Measure over more ripples. ${rounded.said}`],
      measureAgain: true,
    };
  }
  return {
    headline: `Leave the acceleration: up to ${most(ctx, 'a_s')} the ripples stay within ${ctx.text('x_tol')}.`,
    steps: [
      'If they are still seen higher than that, look for another cause: a speed kept through the corner, a loose part on the carriage, a flow that lags behind.',
      ...culprit(ctx),
      ...besides(ctx),
    ],
  };
}
