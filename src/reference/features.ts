/** Features that a tool of the bench reads. */
export const readFeatures = [
  'outside',
  'inside',
  'bore',
  'depth',
  'gap',
  'height',
  'travel',
  'swing',
  'span',
  'angle',
  'slope',
  'mass',
  'force',
  'resistance',
  'voltage',
  'air',
  'contact',
  'humidity',
  'time',
] as const;

/** Features that none reads: set, drawn, wished for or from a table; printed on the part; shown by the machine itself. */
export const unreadFeatures = ['set', 'marked', 'shown'] as const;

/**
 * What of a thing is read, on which the tool depends: a feeler reads a gap and no height. `bore` is a hole too small for a
 * caliper's jaws, `height` a place above another, `swing` the most less the least in one turn, `span` from mark to mark or
 * from middle to middle, `contact` the temperature of what a probe touches.
 */
export type Feature = (typeof readFeatures)[number] | (typeof unreadFeatures)[number];
