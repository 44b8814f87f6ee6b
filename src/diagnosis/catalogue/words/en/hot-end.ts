/**
 * How a hot end is taken apart and put together hot, the same wherever it is. The liner's limit and the torque are common practice, no
 * source.
 */
const HEAT =
  'Heat until the plastic is soft, at most to the liner’s limit (a PTFE liner down to the nozzle: about 240 °C); stay beside it.';
const POWER_OFF = 'Switch off and unplug before a tool touches it: it stays hot for minutes.';
const HOLD = 'Gloves on; hold the block with a second spanner, so that nothing turns on the thin tube or the wires.';
const TIGHTEN =
  'Tighten the nozzle against the heat break while it is hot, the block held: 1 to 3 N·m for a small brass nozzle, M6.';
const GAP =
  'A gap must stay under its hexagon: a nozzle that rests on the block does not seal. Without one, begin again.';

/** From cold to the block held by its spanner: nothing is turned before that. */
export const OPEN_HOT_END = [HEAT, POWER_OFF, HOLD] as const;

/** A nozzle that is in: what seats it again on the heat break. */
export const SEAT_NOZZLE = [
  'Turn the nozzle back by half a turn, anticlockwise seen from its tip.',
  'Turn the heat break home, until it meets the nozzle.',
  TIGHTEN,
  GAP,
] as const;

/** Another nozzle in place of the old one. */
export const CHANGE_NOZZLE = [
  'Turn the nozzle out, anticlockwise seen from its tip; turn the new one in, and back by half a turn.',
  'Turn the heat break home, until it meets the nozzle.',
  TIGHTEN,
  GAP,
] as const;

/** Holding only the nozzle, or with power on, is how it goes wrong. */
export const HOT_END_RISK =
  'Burns: nozzle, block and plastic are hot enough. A tool on live wires shorts them; too tight tears the nozzle, block not held shears the thin tube.';
