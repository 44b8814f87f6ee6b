import type { Instruction } from '../../engine/calculator';
import { advisedWay, SYMBOLS, type Judged, type WayId } from './model';
import { stepsOf, tighten } from './steps';
import { judged, largerName, NAMES, objectionsText, spanIn, type Ask } from './judging';

/** Best strength first met in words: "about 113 % of the proof load". */
const strength = (ctx: Ask, id: WayId): string =>
  `about ${Math.round(ctx.number(SYMBOLS[id].share) * 100)} % of the screw’s proof load`;

function doing(ctx: Ask, id: WayId): string {
  const size = ctx.choice('size');
  switch (id) {
    case 'longer':
      return `Use a longer ${size} screw, down into the good thread`;
    case 'insert':
      return `Fit a wire thread insert: drill ${ctx.text('D_d')}, tap ${size} wire-insert, insert ${ctx.text('L_i')} long`;
    case 'next':
      return `Go up to ${largerName(ctx)}: drill ${ctx.text('D_t')}, tap ${largerName(ctx)}`;
    case 'bolt':
      return `Drill through to ${ctx.text('D_c')} and use a bolt ${size} with a nut`;
    case 'replace':
      return 'Replace the part';
  }
}

/** Why this way and not the others. */
function reason(ctx: Ask, all: readonly Judged[], id: WayId): string {
  const mine = all.find((one) => one.id === id);
  const enough = all.filter((one) => one.standing === 'will do');
  if (mine?.standing === 'will do') {
    const rest =
      enough.length > 1
        ? 'It costs least, your time counted, of those that are surely strong enough.'
        : 'It is the only way that is surely strong enough.';
    return `it bears ${strength(ctx, id)}. ${rest}`;
  }
  const against = mine ? objectionsText(ctx, id, mine.objections) : '';
  return `no way is surely strong enough with wall to spare; this one is the strongest that can be done, ${strength(ctx, id)}. ${against}`;
}

function contradiction(ctx: Ask): Instruction | undefined {
  const [reach, left, depth] = [ctx.number('L_r'), ctx.number('L_e'), ctx.number('L_h')];
  if (left > reach * 1.02) {
    return {
      headline: 'Measure again: more good thread is left than the screw reaches.',
      steps: [
        'The good thread left counts within the screw’s reach only; thread below its tip stands in its own line.',
      ],
      measureAgain: true,
    };
  }
  if (ctx.choice('hole') === 'blind' && reach > depth * 1.02) {
    return {
      headline: 'Measure again: the screw reaches deeper than the blind hole goes.',
      steps: [
        'A screw that meets the bottom never clamps: it may be too long, and the thread sound. Try a shorter one.',
      ],
      measureAgain: true,
    };
  }
  return undefined;
}

/** What the hand does, for every verdict. */
export function instruct(ctx: Ask): Instruction {
  const wrong = contradiction(ctx);
  if (wrong) return wrong;
  const picked = ctx.choice('way');
  const all = judged(ctx);
  if (picked !== 'advised') {
    const own = all.find((one) => one.id === picked);
    const but = own && own.objections.length > 0 ? ` ${objectionsText(ctx, picked, own.objections)}` : '';
    return { headline: `${doing(ctx, picked)}: ${strength(ctx, picked)}.${but}`, steps: stepsOf(ctx, picked) };
  }
  if (ctx.verdict === 'within') {
    return {
      headline: `Leave the hole as it is: what is left holds. Tighten to no more than ${ctx.text('T_e')}.`,
      steps: [
        'Clear torn thread and chips out of the mouth; turn the screw in by hand until it bites squarely.',
        tighten(ctx, 'T_e'),
        'If it ever turns on without getting tighter, stop: then mend it.',
      ],
    };
  }
  const best = advisedWay(all, spanIn(ctx));
  const steps = [`Why this way: ${reason(ctx, all, best)}`, ...stepsOf(ctx, best)];
  if (ctx.verdict === 'too close') {
    return {
      headline: `Whether what is left holds is too close to call: tighten to no more than ${ctx.text('T_e')}, or mend it: ${NAMES[best].toLowerCase()}.`,
      steps: ['Measure the good thread again with the depth rod, from both sides of the hole where you can.', ...steps],
    };
  }
  return { headline: `${doing(ctx, best)}: ${strength(ctx, best)}.`, steps };
}
