import { settable } from '../../engine/settable';

const FULL_TURN = 2 * Math.PI;

/** A turn as a hand sets it: whole turns and what is beyond them, radians. */
interface WholeTurns {
  readonly turns: number;
  readonly rest: number;
}

/**
 * The nearest turn that a hand can set; undefined where that is none.
 * @param angle radians
 * @param step least turn of a hand, radians
 */
export function setTurn(angle: number, step: number): number | undefined {
  const set = Math.abs(settable(angle, step, 'nearest'));
  return set > 0 ? set : undefined;
}

/** Whole turns and the angle beyond them. */
export function wholeTurns(angle: number): WholeTurns {
  // A hair less than whole turns, by rounding, is whole turns.
  const turns = Math.floor(angle / FULL_TURN + 1e-9);
  const rest = angle - turns * FULL_TURN;
  return { turns, rest: Math.abs(rest) < 1e-9 ? 0 : rest };
}

/** A ninth of the bed. */
export type Spot = `${'front' | 'back'} ${'left' | 'middle' | 'right'}` | `${'left' | 'right'} middle` | 'middle';
type Row = readonly [Spot, Spot, Spot];

const SPOTS: readonly [Row, Row, Row] = [
  ['front left', 'front middle', 'front right'],
  ['left middle', 'middle', 'right middle'],
  ['back left', 'back middle', 'back right'],
];

/** Which ninth of a bed of width `W` and depth `D` a place lies in. */
export function spotOf(x: number, y: number, W: number, D: number): Spot {
  const third = (part: number, whole: number): 0 | 1 | 2 => (part < whole / 3 ? 0 : part > (2 * whole) / 3 ? 2 : 1);
  return SPOTS[third(y, D)][third(x, W)];
}

const ORDINALS = ['first', 'second', 'third', 'fourth'] as const;

/** What an adjuster is known by: its place where the layout has one, else its number. */
export type AdjusterName = Spot | (typeof ORDINALS)[number];

const NAMED = {
  corners: ['front left', 'front right', 'back right', 'back left'],
  front: ['front left', 'front right', 'back middle'],
  back: ['back left', 'back right', 'front middle'],
  three: ORDINALS.slice(0, 3),
  four: ORDINALS,
} as const satisfies Readonly<Record<string, readonly AdjusterName[]>>;
export type Layout = keyof typeof NAMED;

/** The adjusters of a layout, in their order. */
export function adjustersOf(layout: Layout): readonly AdjusterName[] {
  return NAMED[layout];
}

/** Direction of turning, seen from above. */
export type Turn = 'clockwise' | 'anticlockwise';

/*
 * Seen from above, right-hand thread. A nut on a screw that hangs from the bed: clockwise it runs down and off, and the
 * spring lifts the bed. A screw turned from above runs down and takes the bed along, as does a nut on a standing screw. A Z
 * screw that turns clockwise runs away from the eye, so its nut climbs.
 */
const CLOCKWISE_RAISES: Readonly<Record<string, boolean>> = {
  nut: true,
  screw: false,
  rest: false,
  z: true,
  raises: true,
  lowers: false,
};

/** Which way to turn, seen from above, to raise or lower the bed at an adjuster. */
export function turnFor(raise: number, build: string, hand: string): Turn {
  const tried = build === 'raises' || build === 'lowers';
  const clockwiseRaises = (CLOCKWISE_RAISES[build] ?? true) === (tried || hand === 'right');
  return raise >= 0 === clockwiseRaises ? 'clockwise' : 'anticlockwise';
}
