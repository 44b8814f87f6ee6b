import { formatValue } from '../../quantity/format';
import { length } from '../../quantity/kinds';
import type { Context, Instruction, Movement, VerdictState } from '../../engine/calculator';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

type Results = (typeof formulas)[number]['text'] extends infer T
  ? T extends `${infer S} =${string}`
    ? S
    : never
  : never;
type Ask = Context<Results | keyof typeof inputs, typeof choices>;

/** More than this all round is no rim any more but another print, m. */
const WIDEST_RIM = 0.015;

const open = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** The end of a result's interval that is sure to do, to two digits; undefined where that end is none. SI with its text. */
function sure(ctx: Ask, symbol: Results, end: 'low' | 'high'): { si: number; text: string } | undefined {
  const si = ctx.known(symbol)?.[end];
  if (si === undefined || si <= 0) return undefined;
  const step = 10 ** (Math.floor(Math.log10(si)) - 1);
  const rounded = (end === 'low' ? Math.floor(si / step) : Math.ceil(si / step)) * step;
  return { si, text: formatValue(rounded, 0, length.mm.unit, { mark: ctx.mark }) };
}

/** The least of the heights that are surely all right, among the checks that are open. */
function shorter(ctx: Ask): { si: number; text: string } | undefined {
  const heights = (['x', 'r_f', 'sigma'] as const).flatMap((of) => {
    if (!open(ctx.check(of))) return [];
    return [sure(ctx, ({ x: 'L_x', r_f: 'L_f', sigma: 'L_h' } as const)[of], 'low')];
  });
  if (heights.includes(undefined)) return undefined;
  return heights.reduce((least, one) => (least && one && least.si <= one.si ? least : one), undefined);
}

/** How wide the foot has to be, in words, with the movement. */
function widen(ctx: Ask): { text: string; movement: Movement } | undefined {
  const foot = sure(ctx, 'B_n', 'high');
  const rim = sure(ctx, 'r_n', 'high');
  if (!foot || !rim) return undefined;
  const [now, bare] = [ctx.number('r'), ctx.choice('foot') === 'bare'];
  const kind = ctx.choice('foot') === 'pad' ? 'pad' : 'rim';
  const text =
    rim.si > WIDEST_RIM
      ? `give it a pad 2 mm thick and ${foot.text} wide`
      : bare
        ? `give it a ${kind} of ${rim.text} all round`
        : `widen its ${kind} to ${rim.text} all round`;
  return { text, movement: { part: 'rim round the foot', direction: 'wider', amount: Math.max(rim.si - now, 0) } };
}

const MEASURE: Readonly<Record<string, string>> = {
  F: 'Measure the drag: print a thin column of known size till it wavers, note the height, and ask for the drag here that gives that sway. Or take the drag of a piece that just broke loose.',
  sigma_a: 'Push a test block off with a scale and choose “measured”: the typical hold is good to a factor of several.',
  q_p: 'Push a test block off with a scale and choose “measured”: how an edge peels is then in the reading.',
  f_m: 'Measure the ripples after a corner and enter their frequency: speed over spacing.',
  q_T: 'Touch the column in a pause: if it gives, it is too warm to judge. More fan, or two pieces at once.',
};

function cures(ctx: Ask): string[] {
  const leads = (['x', 'r_f', 'sigma'] as const).flatMap((of) => {
    if (ctx.check(of) !== 'too close') return [];
    return [ctx.known(of)?.budget[0]?.symbol, of === 'sigma' ? ctx.known('sigma_h')?.budget[0]?.symbol : undefined];
  });
  return [...new Set(leads)].flatMap((lead) => (lead === undefined ? [] : (MEASURE[lead] ?? [])));
}

function remedies(ctx: Ask): { steps: string[]; movements: Movement[] } {
  const steps: string[] = [];
  const movements: Movement[] = [];
  const [sways, shaken, loose] = [open(ctx.check('x')), open(ctx.check('r_f')), open(ctx.check('sigma'))];
  const foot = loose ? widen(ctx) : undefined;
  if (foot) {
    steps.push(`Foot: ${foot.text}. That holds even if drag and hold are both at their worst.`);
    movements.push(foot.movement);
  } else if (loose) steps.push('Foot: a pad 2 mm thick, as wide as there is room for.');
  const end = shorter(ctx);
  if (end) {
    const spare = Math.max(ctx.number('L') - end.si, 0);
    steps.push(`Shorten: up to ${end.text} it is sure to do.`);
    movements.push({ part: 'column', direction: 'shorter', amount: spare });
  }
  if (sways || shaken) {
    steps.push(
      `Thicken: ${ctx.text('b_x')} wide instead of ${ctx.text('b')} brings the sway to what is allowed.`,
      'Bridge: print a second column a few widths away, joined to it at the top and once between. In line with the pair the sway falls to an eighth, across it to a half: set the pair along the faster axis.',
    );
    if (ctx.choice('core') === 'shell') steps.push('One more wall line does more than any infill.');
  }
  if (shaken) {
    steps.push(
      'Slow down: less acceleration and half the speed above the height given; its own frequency lies too near the machine’s.',
    );
  }
  if (ctx.choice('warmth') !== 'cool') {
    steps.push('Print two at once, a hand’s width apart, and more fan: the warm column is the soft one.');
  }
  return { steps, movements };
}

/** What is wrong with it, in a few words. */
function faults(ctx: Ask, state: VerdictState): string {
  const words = [
    ctx.check('sigma') === state ? 'break loose' : undefined,
    ctx.check('x') === state ? 'sway' : undefined,
    ctx.check('r_f') === state ? 'be shaken up' : undefined,
  ].filter((word) => word !== undefined);
  return words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : (words[0] ?? 'fail');
}

/** What to change on the piece, for every state of the checks. */
export function instruct(ctx: Ask): Instruction {
  // Asked first, so that a missing value is named.
  const [sway, allowed] = [ctx.text('x'), ctx.text('x_lim')];
  const [pull, holds] = [ctx.text('sigma'), ctx.text('sigma_h')];
  if (ctx.verdict === 'within') {
    return {
      headline: `Print it as it is: it sways ${sway} of the ${allowed} allowed, and the foot holds.`,
      steps: [
        `At the edge of the foot ${pull} pulls, and the bed stands ${holds}.`,
        'If its walls are rough all the same, look at the machine: the piece is stiff enough to tell.',
      ],
    };
  }
  const { steps, movements } = remedies(ctx);
  if (ctx.verdict === 'too close') {
    return {
      headline: `Make sure before printing it: whether it will ${faults(ctx, 'too close')} is too close to call.`,
      steps: [...cures(ctx), ...steps.map((step) => `Or to be safe. ${step}`)],
      movements,
      measureAgain: true,
    };
  }
  const first =
    ctx.check('sigma') === 'beyond'
      ? (widen(ctx)?.text ?? 'give it a wide pad')
      : `make it ${ctx.text('b_x')} wide, or bridge it to a second one`;
  return {
    headline: `Change the piece: as drawn it will ${faults(ctx, 'beyond')}. To begin with, ${first}.`,
    steps,
    movements,
  };
}
