import type { Standing } from '../../engine/ways';

export const WAY_IDS = ['longer', 'insert', 'next', 'bolt', 'heatset', 'nut', 'replace'] as const;
export type WayId = (typeof WAY_IDS)[number];
/** What stands only in a plastic part. */
const IN_PLASTIC: readonly WayId[] = ['heatset', 'nut'];

/** What of a part the ways hang on: whether it is a plastic, and one that a hot iron harms. */
export interface Part {
  readonly hole: Hole;
  readonly plastic: boolean;
  readonly noIron: boolean;
}

const waysIn = ({ plastic }: Part): readonly WayId[] => WAY_IDS.filter((id) => plastic || !IN_PLASTIC.includes(id));
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
  heatset: { share: 's_h', wall: 'w_h', minutes: 't_h', cost: 'C_h', torque: 'T_h' },
  nut: { share: 's_k', wall: 'w_k', minutes: 't_k', cost: 'C_k', torque: 'T_k' },
  replace: { share: 's_r', wall: 'w', minutes: 't_r', cost: 'C_r', torque: 'T_r' },
} as const;

const EVERYWHERE = [
  ...(['s_l', 's_i', 's_n', 's_b', 's_r', 's_min'] as const),
  ...(['C_l', 'C_i', 'C_n', 'C_b', 'C_r'] as const),
  ...(['L_b', 'x_i', 'x_w', 'w_i', 'w_n', 'm_i', 'm_n'] as const),
] as const;
const OF_PLASTIC = ['s_h', 's_k', 'C_h', 'C_k', 'x_h', 'x_k', 'w_h', 'w_k', 'm_h', 'm_k'] as const;
export type Asked = (typeof EVERYWHERE)[number] | (typeof OF_PLASTIC)[number];

/** Everything the comparison asks for. */
export const askedOf = ({ plastic }: Part): readonly Asked[] => (plastic ? [...EVERYWHERE, ...OF_PLASTIC] : EVERYWHERE);

/** What bars a way. */
export type Bar =
  | 'noThreadBelow'
  | 'tooShallow'
  | 'breaksOut'
  | 'backNotReached'
  | 'noWasherRoom'
  | 'ironHarms'
  | 'noRoomToMelt'
  | 'noFloorLeft';

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

function bars(id: WayId, read: (symbol: Asked) => Span, { hole, noIron }: Part): Objection[] {
  const least = (symbol: Asked): number => read(symbol).high;
  switch (id) {
    case 'longer':
      return read('L_b').value <= 0 ? [{ of: 'noThreadBelow' }] : [];
    case 'insert':
      if (least('w_i') <= 0) return [{ of: 'breaksOut' }];
      // An insert is half a pitch and more shorter than its name: a doubt of the caliper does not bar it.
      return least('x_i') < 0 ? [{ of: 'tooShallow' }] : [];
    case 'next':
      return least('w_n') <= 0 ? [{ of: 'breaksOut' }] : [];
    case 'bolt':
      if (hole !== 'reached') return [{ of: 'backNotReached' }];
      return least('x_w') < 0 ? [{ of: 'noWasherRoom' }] : [];
    case 'heatset':
      if (noIron) return [{ of: 'ironHarms' }];
      if (least('w_h') <= 0) return [{ of: 'breaksOut' }];
      return least('x_h') < 0 ? [{ of: 'noRoomToMelt' }] : [];
    case 'nut':
      if (least('w_k') <= 0) return [{ of: 'breaksOut' }];
      return least('x_k') < 0 ? [{ of: 'noFloorLeft' }] : [];
    case 'replace':
      return [];
  }
}

/** What is left of the wall, by the way that takes from it. */
const WALLS: Readonly<Partial<Record<WayId, Asked>>> = { insert: 'm_i', next: 'm_n', heatset: 'm_h', nut: 'm_k' };

function standing(objections: readonly Objection[]): Judged['standing'] {
  if (objections.some((one) => !('surely' in one))) return 'not possible';
  if (objections.some((one) => 'surely' in one && one.surely)) return 'falls short';
  return objections.length > 0 ? 'doubtful' : 'will do';
}

/** Every way to mend this part, judged by strength, wall and room. `read` gives SI spans. */
export function judgeWays(read: (symbol: Asked) => Span, part: Part): readonly Judged[] {
  return waysIn(part).map((id) => {
    const wall = WALLS[id];
    const objections = [
      ...bars(id, read, part),
      ...against(read(SYMBOLS[id].share), read('s_min').value, 'strength'),
      ...(wall === undefined ? [] : against(read(wall), 0, 'wall')),
    ];
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
