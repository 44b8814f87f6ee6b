import type { Standing } from '../../engine/ways';

export const WAY_IDS = ['longer', 'insert', 'next', 'bolt', 'replace'] as const;
export type WayId = (typeof WAY_IDS)[number];
export type Hole = 'reached' | 'shut' | 'blind';

/** A value with the interval it may lie in, SI. */
export interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The symbols that belong to each way. */
export const SYMBOLS = {
  longer: { share: 's_l', wall: 'w', minutes: 't_l', cost: 'C_l', torque: 'T_l' },
  insert: { share: 's_i', wall: 'w_i', minutes: 't_i', cost: 'C_i', torque: 'T_i' },
  next: { share: 's_n', wall: 'w_n', minutes: 't_n', cost: 'C_n', torque: 'T_n' },
  bolt: { share: 's_b', wall: 'w_b', minutes: 't_b', cost: 'C_b', torque: 'T_b' },
  replace: { share: 's_r', wall: 'w', minutes: 't_r', cost: 'C_r', torque: 'T_r' },
} as const;

/** Everything the comparison asks for. */
export const ASKED = [
  ...(['s_l', 's_i', 's_n', 's_b', 's_r', 's_min'] as const),
  ...(['C_l', 'C_i', 'C_n', 'C_b', 'C_r'] as const),
  ...(['L_b', 'x_i', 'x_w', 'w_i', 'w_n', 'm_i', 'm_n'] as const),
] as const;
export type Asked = (typeof ASKED)[number];

/** What bars a way. */
export type Bar = 'noThreadBelow' | 'tooShallow' | 'breaksOut' | 'backNotReached' | 'noWasherRoom';

/** What stands against a way. `strength` and `wall` may be doubtful or short, the others bar it. */
export type Objection = { readonly of: 'strength' | 'wall'; readonly surely: boolean } | { readonly of: Bar };

export interface Judged {
  readonly id: WayId;
  readonly standing: Exclude<Standing, 'advised'>;
  readonly objections: readonly Objection[];
}

/** Against a least value that is set, not measured: 'will do' only where the whole interval lies above it. */
function against(span: Span, least: number, of: 'strength' | 'wall'): Objection[] {
  if (span.low >= least) return [];
  return [{ of, surely: span.high < least }];
}

function bars(id: WayId, read: (symbol: Asked) => Span, hole: Hole): Objection[] {
  if (id === 'longer' && read('L_b').value <= 0) return [{ of: 'noThreadBelow' }];
  if (id === 'insert' && read('w_i').high <= 0) return [{ of: 'breaksOut' }];
  // An insert is half a pitch and more shorter than its name: a doubt of the caliper does not bar it.
  if (id === 'insert' && read('x_i').high < 0) return [{ of: 'tooShallow' }];
  if (id === 'next' && read('w_n').high <= 0) return [{ of: 'breaksOut' }];
  if (id === 'bolt' && hole !== 'reached') return [{ of: 'backNotReached' }];
  if (id === 'bolt' && read('x_w').high < 0) return [{ of: 'noWasherRoom' }];
  return [];
}

function standing(objections: readonly Objection[]): Judged['standing'] {
  if (objections.some((one) => !('surely' in one))) return 'not possible';
  if (objections.some((one) => 'surely' in one && one.surely)) return 'falls short';
  return objections.length > 0 ? 'doubtful' : 'will do';
}

/** Every way to mend, judged by strength, wall and room. `read` gives SI spans. */
export function judgeWays(read: (symbol: Asked) => Span, hole: Hole): readonly Judged[] {
  return WAY_IDS.map((id) => {
    const objections = [...bars(id, read, hole), ...against(read(SYMBOLS[id].share), read('s_min').value, 'strength')];
    if (id === 'insert') objections.push(...against(read('m_i'), 0, 'wall'));
    if (id === 'next') objections.push(...against(read('m_n'), 0, 'wall'));
    return { id, standing: standing(objections), objections };
  });
}

const RANK = { 'will do': 0, doubtful: 1, 'falls short': 2, 'not possible': 3 } as const;

/** The way to advise: of those that surely do the cheapest, time counted; failing these the strongest that can be done. */
export function advisedWay(judged: readonly Judged[], read: (symbol: Asked) => Span): WayId {
  const sorted = [...judged].sort((a, b) => {
    const rank = RANK[a.standing] - RANK[b.standing];
    if (rank !== 0) return rank;
    if (a.standing === 'will do') return read(SYMBOLS[a.id].cost).value - read(SYMBOLS[b.id].cost).value;
    return read(SYMBOLS[b.id].share).value - read(SYMBOLS[a.id].share).value;
  });
  // A new part can always be had.
  return sorted[0]?.id ?? 'replace';
}
