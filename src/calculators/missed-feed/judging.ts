import { formatNumber } from '../../quantity/format';
import type { Context } from '../../engine/calculator';
import type { Standing } from '../../engine/ways';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

type Results = (typeof formulas)[number]['text'] extends infer T
  ? T extends `${infer S} =${string}`
    ? S
    : never
  : never;
export type Ask = Context<Results | keyof typeof inputs, typeof choices>;

export type WayId = 'resume' | 'glue' | 'anew';

export interface Judged {
  readonly id: WayId;
  readonly standing: Exclude<Standing, 'advised'>;
  /** Why it does not surely do, in a sentence; empty where it does. */
  readonly why: string;
  /** What the seam holds, over a sound layer. */
  readonly strength: number;
  readonly cost: number;
  /** s */
  readonly time: number;
}

/** Money as it is counted: whole from ten on, else hundredths. */
export function coins(ctx: Ask, cost: number): string {
  const text = cost >= 10 ? cost.toFixed(0) : cost.toFixed(2);
  return ctx.mark === 'comma' ? text.replace('.', ',') : text;
}

export const hours = (ctx: Ask, seconds: number): string => formatNumber(seconds / 3600, 2, ctx.mark);
export const percent = (share: number): string => `${Math.round(share * 100)} %`;

type Finding = Pick<Judged, 'standing' | 'why'>;

/** A result against a set least or most: surely all right, surely not, or in doubt. */
function against(ctx: Ask, of: 's_r' | 's_g' | 'z_b', limit: number, words: string): Finding {
  const known = ctx.known(of);
  if (!known) return { standing: 'doubtful', why: `${words} is not known.` };
  const upTo = of === 'z_b';
  if (upTo ? known.high <= limit : known.low >= limit) return { standing: 'will do', why: '' };
  if (upTo ? known.low > limit : known.high < limit) return { standing: 'falls short', why: `${words} surely.` };
  return { standing: 'doubtful', why: `${words} perhaps.` };
}

const RANK = { 'will do': 0, doubtful: 1, 'falls short': 2, 'not possible': 3 } as const;

/** Everything that speaks against a way, with the worst standing of all. */
function worst(findings: readonly Finding[]): Finding {
  const why = findings
    .map((one) => one.why)
    .filter((text) => text !== '')
    .join(' ');
  const standing = findings.reduce<Finding['standing']>(
    (rank, one) => (RANK[one.standing] > RANK[rank] ? one.standing : rank),
    'will do',
  );
  return { standing, why };
}

function goingOn(ctx: Ask): Finding {
  if (ctx.choice('stands') === 'off') {
    return { standing: 'not possible', why: 'A part that has moved cannot go back to its place to a tenth of a line.' };
  }
  const strength = against(ctx, 's_r', ctx.number('s_n'), 'The seam holds less than wanted,');
  if (ctx.choice('band') === 'left') return strength;
  return worst([
    strength,
    against(ctx, 'z_b', ctx.number('b_lim'), 'The starved band is too high to cut away in place,'),
  ]);
}

/** Going on, gluing, a new one: how each stands. A new one always will do. */
export function judged(ctx: Ask): readonly Judged[] {
  const glue = against(ctx, 's_g', ctx.number('s_n'), 'The glued joint holds less than wanted,');
  return [
    { id: 'resume', ...goingOn(ctx), strength: ctx.number('s_r'), cost: ctx.number('C_r'), time: ctx.number('T_r') },
    { id: 'glue', ...glue, strength: ctx.number('s_g'), cost: ctx.number('C_g'), time: ctx.number('T_g') },
    { id: 'anew', standing: 'will do', why: '', strength: 1, cost: ctx.number('C_n'), time: ctx.number('T_n') },
  ];
}

/** The cheapest of those that surely do. */
export function advised(all: readonly Judged[]): WayId {
  const enough = all.filter((one) => one.standing === 'will do');
  return [...enough].sort((a, b) => a.cost - b.cost)[0]?.id ?? 'anew';
}
