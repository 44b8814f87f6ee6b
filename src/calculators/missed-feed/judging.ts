import type { AskOf } from '../../engine/calculator';
import type { Standing } from '../../engine/ways';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type { Against, Coins, WayId } from './words/en/orders';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;

export interface Judged {
  readonly id: WayId;
  readonly standing: Exclude<Standing, 'advised'>;
  /** Why it does not surely do; empty where it does. */
  readonly against: readonly Against[];
  /** What the seam holds, over a sound layer. */
  readonly strength: number;
  readonly cost: number;
  /** s */
  readonly time: number;
}

/** Money as it is counted: whole from ten on, else hundredths. */
export const coins = (cost: number): Coins => ({ value: cost, decimals: cost >= 10 ? 0 : 2 });

/** Hours to two digits. */
export const hours = (seconds: number): number => Number((seconds / 3600).toPrecision(2));
export const percent = (share: number): number => Math.round(share * 100);

type Finding = Pick<Judged, 'standing' | 'against'>;

const OF = { seam: 's_r', joint: 's_g', band: 'z_b' } as const;

/** A result against a set least or most: surely all right, surely not, or in doubt. */
function against(ask: Ask, what: keyof typeof OF, limit: number): Finding {
  const known = ask.known(OF[what]);
  if (!known) return { standing: 'doubtful', against: [{ what, how: 'unknown' }] };
  const upTo = what === 'band';
  if (upTo ? known.high <= limit : known.low >= limit) return { standing: 'will do', against: [] };
  if (upTo ? known.low > limit : known.high < limit) {
    return { standing: 'falls short', against: [{ what, how: 'surely' }] };
  }
  return { standing: 'doubtful', against: [{ what, how: 'perhaps' }] };
}

const RANK = { 'will do': 0, doubtful: 1, 'falls short': 2, 'not possible': 3 } as const;

/** Everything that speaks against a way, with the worst standing of all. */
function worst(findings: readonly Finding[]): Finding {
  const standing = findings.reduce<Finding['standing']>(
    (rank, one) => (RANK[one.standing] > RANK[rank] ? one.standing : rank),
    'will do',
  );
  return { standing, against: findings.flatMap((one) => one.against) };
}

/** What holds a person, heat, mains or a raised load gets no seam, whatever it would hold, and for no other reason. */
const NEVER: Finding = { standing: 'not possible', against: [{ what: 'duty', how: 'surely' }] };

export const mustHold = (ask: Ask): boolean => ask.choice('duty') === 'safety';

function goingOn(ask: Ask): Finding {
  if (mustHold(ask)) return NEVER;
  if (ask.choice('stands') === 'off') {
    return { standing: 'not possible', against: [{ what: 'place', how: 'surely' }] };
  }
  const strength = against(ask, 'seam', ask.number('s_n'));
  if (ask.choice('band') === 'left') return strength;
  return worst([strength, against(ask, 'band', ask.number('b_lim'))]);
}

/** Going on, gluing, a new one: how each stands. A new one always will do. */
export function judged(ask: Ask): readonly Judged[] {
  const glue = mustHold(ask) ? NEVER : against(ask, 'joint', ask.number('s_n'));
  return [
    { id: 'resume', ...goingOn(ask), strength: ask.number('s_r'), cost: ask.number('C_r'), time: ask.number('T_r') },
    { id: 'glue', ...glue, strength: ask.number('s_g'), cost: ask.number('C_g'), time: ask.number('T_g') },
    { id: 'anew', standing: 'will do', against: [], strength: 1, cost: ask.number('C_n'), time: ask.number('T_n') },
  ];
}

/** The cheapest of those that surely do. */
export function advised(all: readonly Judged[]): WayId {
  const enough = all.filter((one) => one.standing === 'will do');
  return [...enough].sort((a, b) => a.cost - b.cost)[0]?.id ?? 'anew';
}
