import type { SignPicture } from '../../../engine/signs';

/** The lines of a picture, as paths on a field of 64 x 40: the level thing dashed, the thing as it stands, an arrow on what is high or open. */
export interface Drawing {
  readonly ghost: string;
  readonly ink: string;
  readonly arrow: string;
}

/** An arrow from one height to another. */
const arrow = (x: number, from: number, to: number): string => {
  const barb = from > to ? 4 : -4;
  return `M${x} ${from}V${to}M${x - 3} ${to + barb}L${x} ${to}L${x + 3} ${to + barb}`;
};

/** A beam on two posts, seen from before. */
const beam = (left: number, right: number): string =>
  `M10 37V${left}M54 37V${right}M4 37H16M48 37H60M6 ${left}L58 ${right}`;

/** A plate seen from before and above: its front edge below, its back edge farther up. */
const plate = (front: number, back: number): string => `M5 ${front}H43L59 ${back}H21Z`;

/** A square's blade along a plate, from front to back. */
const blade = (front: number, back: number): string => `M24 ${front}L40 ${back}`;

const box = (left: number, top: number, right: number, bottom: number): string =>
  `M${left} ${top}H${right}V${bottom}H${left}Z`;

/** A circle about a point. */
const circle = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

/** A mass on an arm over its guide, seen along the guide; with the drive, its belt stands on the left. */
const mass = (x: number, drive: string): Drawing => ({
  ghost: 'M32 2V38',
  ink: box(27, 18, 37, 28) + box(10, 13, 54, 16) + circle(x, 7, 5) + drive,
  arrow: arrow(x, 20, 36),
});
const DRIVE = 'M2 4V36M6 4V36M2 10L6 8M2 18L6 16M2 26L6 24M2 34L6 32';

/** Two belts side by side, numbered, each with the pulley of its tensioner on the right. */
const tensioners = (first: number, second: number): Drawing => {
  const [near, far, y] = first < second ? [first, second, 29] : [second, first, 11];
  const belt = (to: number, at: number): string => `M14 ${at - 5}H${to}M14 ${at + 5}H${to}${circle(to, at, 5)}`;
  return {
    ghost: `M${near} 1V39`,
    ink: `${belt(first, 11)}${belt(second, 29)}M5 9L8 7V15M4.5 27C4.5 24 9 24 9 27C9 29 5 31 4.5 33H9`,
    arrow: `M${near} ${y}H${far}M${far - 4} ${y - 3}L${far} ${y}L${far - 4} ${y + 3}`,
  };
};

/** A corner of a frame beside a square: its upright opens or closes. */
const corner = (top: number): Drawing => ({
  ghost: 'M14 35V4',
  ink: `M4 35H58M14 35L${top} 4M10 35L${top - 4} 4M20 35V29H14`,
  arrow: `M14 9H${top}M${top + (top > 14 ? -4 : 4)} 6L${top} 9L${top + (top > 14 ? -4 : 4)} 12`,
});

/** A rod with a dial at its middle and one near its end: the high points on one side, or on two. */
const runOut = (second: number): Drawing => ({
  ghost: 'M4 20H60',
  ink: `${box(4, 15, 60, 25)}${circle(20, 8, 3)}${circle(46, second, 3)}`,
  arrow: arrow(20, 24, 12) + arrow(46, second < 20 ? 24 : 16, second < 20 ? 12 : 28),
});

/** A caliper's jaws over two crests. */
const jaws = (left: number, right: number): Drawing => ({
  ghost: 'M18 2V38M46 2V38',
  ink: `M2 35C10 35 12 22 18 22S26 35 32 35S40 22 46 22S54 35 62 35M${left} 3V30M${right} 3V30M${left} 3H${left - 4}M${right} 3H${right + 4}`,
  arrow: `M${left} 10H${right}M${left + 4} 7L${left} 10L${left + 4} 13M${right - 4} 7L${right} 10L${right - 4} 13`,
});

/** Of every picture; a new name in engine/signs.ts wants its drawing here. */
export const drawings: Readonly<Record<SignPicture, Drawing>> = {
  'right-higher': { ghost: 'M6 28H58', ink: beam(28, 14), arrow: arrow(60, 30, 6) },
  'left-higher': { ghost: 'M6 28H58', ink: beam(14, 28), arrow: arrow(4, 30, 6) },
  'back-higher': { ghost: plate(36, 22), ink: plate(36, 12), arrow: arrow(40, 20, 2) },
  'front-higher': { ghost: plate(36, 16), ink: plate(26, 16), arrow: arrow(24, 37, 22) },
  'gap-at-back': { ghost: '', ink: `${plate(36, 20)}${blade(36, 6)}M24 36L40 20`, arrow: arrow(46, 18, 4) },
  'gap-at-front': { ghost: '', ink: `${plate(36, 20)}${blade(22, 20)}M24 36L40 20`, arrow: arrow(18, 35, 20) },
  'wider-than-square': corner(4),
  'sharper-than-square': corner(28),
  'high-points-alike': runOut(8),
  'high-points-opposite': runOut(32),
  'mass-by-drive': mass(16, DRIVE),
  'mass-away-from-drive': mass(48, DRIVE),
  'mass-left': mass(16, ''),
  'mass-right': mass(48, ''),
  'second-further-out': tensioners(42, 56),
  'first-further-out': tensioners(56, 42),
  'jaws-inside-crests': jaws(25, 39),
  'jaws-outside-crests': jaws(10, 54),
};
