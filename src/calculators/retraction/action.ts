import { symbolText } from '../../engine/evaluate';
import type { Known } from '../../formula/outcome';
import type { Instruction, VerdictState } from '../../engine/calculator';
import { judgePiece } from './model';

/** What the instruction asks of the results; a misspelt symbol is an error where `index.ts` hands its context over. */
type Asked =
  'x_r' | 'x_set' | 'x_d' | 'x_hi' | 'x_max' | 'x_step' | 'x_1' | 'x_b' | 'd_s' | 'd_v' | 'b' | 'b_min' | 'g' | 't_x' | 't_b' | 'F_g' | 'F_max' | 'd_0' | 'd_2'; // prettier-ignore
type Checked = 'x_set' | 'gamma_w' | 'D_t' | 'd_0' | 'F_g';

interface Asking {
  number(symbol: Asked): number;
  text(symbol: Asked, options?: { readonly magnitude?: boolean }): string;
  known(symbol: Asked): Known | undefined;
  check(of: Checked): VerdictState;
}

const NAMES: Readonly<Record<string, string>> = {
  beta: 'the melt’s flow values',
  K: 'the melt’s flow values',
  n: 'the flow index',
  F_m: 'the push force',
  f_c: 'the stretching of the melt',
  mu_t: 'the friction in the tube',
  E: 'the modulus of the filament',
  B: 'the bulk modulus of the melt',
  V: 'the volume of melt',
  L: 'the free length',
  D_t: 'the bore of the tube',
  d_f: 'the filament diameter',
  Theta: 'the bend of the tube',
  s_b: 'the backlash',
  d: 'the nozzle bore',
  l: 'the length of the land',
  d_0: 'the bore above the cone',
};

function dominant(ctx: Asking): string {
  const [first] = ctx.known('x_r')?.budget ?? [];
  if (!first) return 'The figure rests on your entries alone; print the test piece to settle it.';
  const name = NAMES[first.symbol] ?? symbolText(first.symbol);
  const share = Math.round(first.share * 100);
  return `Most of the doubt (${share} %) comes from ${name}; the test piece settles it without knowing that.`;
}

/** One sentence on the piece the person planned, and why. */
function onPiece(ctx: Asking): string {
  const [x_1, x_b, d_s] = [ctx.known('x_1'), ctx.known('x_b'), ctx.known('d_s')];
  if (!x_1 || !x_b || !d_s)
    return 'Whether the planned test piece can show the difference cannot be told from these values.';
  const [b, b_min, g, d_v] = [ctx.number('b'), ctx.number('b_min'), ctx.number('g'), ctx.number('d_v')];
  const judged = judgePiece({ b, b_min, g, x_1, x_b, d_s, d_v });
  if (judged.state === 'shows') return 'The test piece you planned shows the difference with this nozzle.';
  const verb = judged.state === 'may show' ? 'may or may not show' : 'cannot show';
  return `The test piece you planned ${verb} the difference. ${judged.reasons.join(' ')} Or save the one offered here, sized for this nozzle.`;
}

const PRINT =
  'Print two blocks apart, once at each length, at the same heat and speeds. Keep the shortest length that leaves the gap clean and starts each line at full width.';

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** A mistake in the shape or a flow outside the model: nothing to change on this figure. */
function unfit(ctx: Asking): Instruction | undefined {
  if (doubtful(ctx.check('D_t')) || doubtful(ctx.check('d_0'))) {
    return {
      headline: 'Leave the length alone and measure tube, filament and nozzle again.',
      steps: [
        'These bores do not fit each other: the tube must pass the filament, and the cone must narrow to the tip.',
      ],
    };
  }
  if (!doubtful(ctx.check('gamma_w'))) return undefined;
  return {
    headline: 'Leave the length alone: the flow is too slow for this figure.',
    steps: [
      'At so low a shear rate the melt no longer follows a power law. Measure the push force instead, or go by the test piece.',
      PRINT,
      onPiece(ctx),
    ],
  };
}

type Drive = 'tube' | 'head';
type Source = 'table' | 'force';

/** A figure that no drive can push, or that would pull the soft end into the cold part: the length is not the cure. */
function overAsked(ctx: Asking, drive: Drive, source: Source): Instruction | undefined {
  const pushes = ctx.check('F_g') === 'beyond';
  const [set, most] = [ctx.number('x_set'), ctx.number('x_max')];
  const over = pushes || ctx.number('x_r') > most;
  const lower = set > most && (over || ctx.check('x_set') !== 'beyond');
  if (!over && !lower) return undefined;
  const steps = [
    ...(pushes
      ? [
          `This line would take a push of ${ctx.text('F_g')}, and a drive gives about ${ctx.text('F_max')}.`,
          ...(source === 'table'
            ? ['If the drive keeps up without slipping, the flow values are wrong for this plastic: measure the push.']
            : ['Read the scale again: a drive that keeps up at this flow cannot be pushing that hard.']),
        ]
      : []),
    ...(over
      ? [
          'Print slower, hotter or with a wider nozzle: less pressure stores less, and less oozes.',
          ...(drive === 'tube' ? ['A shorter tube with fewer bends, or a stiffer filament, stores less as well.'] : []),
        ]
      : []),
    `Never pull back more than ${ctx.text('x_max')}: the soft end would reach the cold part, set there and jam.`,
    onPiece(ctx),
  ];
  if (lower) {
    return {
      headline: `Lower the pull-back length from ${ctx.text('x_set')} to ${ctx.text('x_max')}, the most for this hot end${over ? '; print slower, hotter or wider' : ''}.`,
      steps,
      movements: [{ part: 'pull-back length', direction: 'shorter', amount: set - most }],
    };
  }
  return { headline: `Leave the pull-back length at ${ctx.text('x_set')}: print slower, hotter or wider.`, steps };
}

/** Where the doubt reaches further than a drive can push. */
function onPush(ctx: Asking): string[] {
  if (ctx.check('F_g') !== 'too close') return [];
  return [
    `The doubt reaches a push of more than ${ctx.text('F_max')}: if the drive slips or grinds, print slower or hotter.`,
  ];
}

/** The other nozzle is no part of the verdict, but its figures have no value with this bore above the cone. */
function onOther(ctx: Asking): string[] {
  if (ctx.number('d_2') < ctx.number('d_0')) return [];
  return [
    `The other nozzle (${ctx.text('d_2')}) is as wide as the bore above the cone (${ctx.text('d_0')}) or wider: its lengths cannot be told.`,
  ];
}

/**
 * What to do about the pull-back length: nothing, raise it, lower it, or print before touching it.
 *
 * @param drive where the drive sits
 * @param source where the pressure comes from
 */
export function instruct(ctx: Asking, drive: Drive, source: Source): Instruction {
  // Asked first, so that a missing value is named.
  ctx.number('x_d');
  const found = unfit(ctx) ?? overAsked(ctx, drive, source) ?? setLength(ctx, drive, source);
  return { ...found, steps: [...found.steps, ...onOther(ctx)] };
}

function setLength(ctx: Asking, drive: Drive, source: Source): Instruction {
  const off = ctx.number('x_d');
  const [set, wanted, step] = [ctx.text('x_set'), ctx.text('x_r'), ctx.text('x_step')];
  const state = ctx.check('x_set');
  if (state === 'within') {
    return {
      headline: `Leave the pull-back length at ${set}: nothing to change.`,
      steps: ['If it still strings, look at heat and damp filament before the length.', ...onPush(ctx), onPiece(ctx)],
    };
  }
  const longer = off < 0;
  const towards = longer ? 'up' : 'down';
  const direction = longer ? 'longer' : 'shorter';
  const never = longer
    ? [`Never beyond ${ctx.text('x_max')}: the soft end would reach the cold part, set there and jam.`]
    : [];
  if (state === 'too close') {
    return {
      headline: 'Print the test piece before changing the length: these figures do not settle it.',
      steps: [
        `Start at ${set} and go ${towards} in steps of ${step}; the figures point to ${wanted}, with ${ctx.text('x_hi')} the most.`,
        ...never,
        PRINT,
        ...onPush(ctx),
        dominant(ctx),
        ...(source === 'table' ? ['A push force measured at this flow narrows the figure.'] : []),
        onPiece(ctx),
      ],
    };
  }
  const why = longer
    ? 'What is stored is more than what is pulled back, so the tip stays under pressure on travels.'
    : drive === 'head'
      ? 'What is pulled back beyond the stored length draws air into the tip and soft plastic up into the cold part.'
      : 'What is pulled back beyond the stored length draws air into the tip, and wears the filament at the gear.';
  return {
    headline: `${longer ? 'Raise' : 'Lower'} the pull-back length from ${set} towards ${wanted}, in steps of ${step}.`,
    steps: [
      why,
      ...never,
      PRINT,
      ...onPush(ctx),
      ...(ctx.number('t_x') > (ctx.known('t_b')?.high ?? Infinity)
        ? [
            `The pull-back takes ${ctx.text('t_x')}, longer than the pressure needs to bleed by itself: pull back faster.`,
          ]
        : []),
      dominant(ctx),
      onPiece(ctx),
    ],
    movements: [{ part: 'pull-back length', direction, amount: Math.abs(off) }],
  };
}
