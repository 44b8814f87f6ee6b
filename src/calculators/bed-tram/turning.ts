const FULL_TURN = 2 * Math.PI;

/** Fractions of a turn that a hand finds on a clock: eighths, thirds and twelfths. */
const FRACTIONS: readonly (readonly [value: number, fraction: string | undefined])[] = [
  [0, undefined],
  [1 / 12, '1/12'],
  [1 / 8, '1/8'],
  [1 / 6, '1/6'],
  [1 / 4, '1/4'],
  [1 / 3, '1/3'],
  [3 / 8, '3/8'],
  [1 / 2, '1/2'],
  [5 / 8, '5/8'],
  [2 / 3, '2/3'],
  [3 / 4, '3/4'],
  [5 / 6, '5/6'],
  [11 / 12, '11/12'],
  [1, undefined],
];

/** A hand sees so much on a clock face, in turns. */
const SEEN = 1 / 72;

/** A turn as the nearest on a clock face: whole turns and a fraction, and on which side of it the turn lies. */
export interface Clock {
  readonly whole: number;
  readonly fraction: string | undefined;
  readonly off: 'over' | 'under' | undefined;
}

/**
 * The nearest on a clock face; undefined below a twenty-fourth of a turn.
 * @param angle radians
 */
export function clockOf(angle: number): Clock | undefined {
  const turns = Math.abs(angle) / FULL_TURN;
  const rest = turns - Math.floor(turns);
  const [value, fraction] = FRACTIONS.reduce((best, one) =>
    Math.abs(one[0] - rest) < Math.abs(best[0] - rest) ? one : best,
  );
  const whole = Math.floor(turns) + (value === 1 ? 1 : 0);
  if (whole === 0 && fraction === undefined) return undefined;
  return { whole, fraction, off: rest - value > SEEN ? 'over' : value - rest > SEEN ? 'under' : undefined };
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
