const FULL_TURN = 2 * Math.PI;

/** Fractions of a turn that a hand finds on a clock: eighths, thirds and twelfths. */
const FRACTIONS: readonly (readonly [value: number, text: string])[] = [
  [0, ''],
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
  [1, ''],
];

/** A hand sees so much on a clock face, in turns. */
const SEEN = 1 / 72;

/**
 * "1/4 turn", "just over 1 1/2 turns", "2 turns": the nearest on a clock face; empty below a twenty-fourth.
 * @param angle radians
 */
export function clockText(angle: number): string {
  const turns = Math.abs(angle) / FULL_TURN;
  const rest = turns - Math.floor(turns);
  const [value, fraction] = FRACTIONS.reduce((best, one) =>
    Math.abs(one[0] - rest) < Math.abs(best[0] - rest) ? one : best,
  );
  const whole = Math.floor(turns) + (value === 1 ? 1 : 0);
  if (whole === 0 && fraction === '') return '';
  const about = rest - value > SEEN ? 'just over ' : value - rest > SEEN ? 'just under ' : '';
  const number = [whole === 0 ? '' : String(whole), fraction].filter((part) => part !== '').join(' ');
  return `${about}${number} ${whole > 1 || (whole === 1 && fraction !== '') ? 'turns' : 'turn'}`;
}

/** "front left", "back middle", "middle". */
export function placeWords(x: number, y: number, W: number, D: number): string {
  const third = (part: number, whole: number): 0 | 1 | 2 => (part < whole / 3 ? 0 : part > (2 * whole) / 3 ? 2 : 1);
  const across = ['left', '', 'right'][third(x, W)] ?? '';
  const along = ['front', '', 'back'][third(y, D)] ?? '';
  if (across !== '' && along !== '') return `${along} ${across}`;
  return across === '' && along === '' ? 'middle' : `${along}${across} middle`;
}

const ORDINALS = ['first', 'second', 'third', 'fourth'] as const;

const NAMED: Readonly<Record<string, readonly string[]>> = {
  corners: ['front left', 'front right', 'back right', 'back left'],
  front: ['front left', 'front right', 'back middle'],
  back: ['back left', 'back right', 'front middle'],
};

/** What an adjuster is called, counted from 0: by its place where the layout has one, else by its number. */
export function adjusterName(layout: string, i: number): string {
  return NAMED[layout]?.[i] ?? ORDINALS[i] ?? '';
}

/** How many adjusters a layout has. */
export function adjusterCount(layout: string): 3 | 4 {
  return layout === 'corners' || layout === 'four' ? 4 : 3;
}

export type Way = 'clockwise' | 'anticlockwise';

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
export function wayOf(raise: number, build: string, hand: string): Way {
  const tried = build === 'raises' || build === 'lowers';
  const clockwiseRaises = (CLOCKWISE_RAISES[build] ?? true) === (tried || hand === 'right');
  return raise >= 0 === clockwiseRaises ? 'clockwise' : 'anticlockwise';
}
