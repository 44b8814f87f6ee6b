import say from './words/en';

/** A bench tool: what it reads and how far the truth may lie from the reading. */
export interface Tool {
  readonly id: string;
  readonly name: string;
  /** Kind of quantity it reads. */
  readonly kind: string;
  /** Half-width in SI; for `relative` tools a share of the reading. */
  readonly half: number;
  readonly relative?: boolean;
  /** One division of its scale, SI: the step of a nudge. */
  readonly division: number;
}

/** Value printed or stamped on the part: taken as exact. */
export const AS_MARKED = 'as-marked';

const MM = 1e-3;
const DEG = Math.PI / 180;

/*
 * Half-widths are typical of the trade, from memory; a half-width typed after ± takes their place.
 * Coarsest first within a kind: the advice on a better tool takes the coarsest that settles the matter.
 */
export const tools: readonly Tool[] = [
  { id: 'tape', name: say.tools.tape, kind: 'length', half: 1 * MM, division: 1 * MM },
  { id: 'rule', name: say.tools.rule, kind: 'length', half: 0.5 * MM, division: 0.5 * MM },
  { id: 'caliper', name: say.tools.caliper, kind: 'length', half: 0.03 * MM, division: 0.01 * MM },
  { id: 'feeler', name: say.tools.feeler, kind: 'length', half: 0.01 * MM, division: 0.05 * MM },
  { id: 'dial', name: say.tools.dial, kind: 'length', half: 0.01 * MM, division: 0.01 * MM },
  { id: 'micrometer', name: say.tools.micrometer, kind: 'length', half: 0.004 * MM, division: 0.01 * MM },
  { id: 'protractor', name: say.tools.protractor, kind: 'angle', half: 0.5 * DEG, division: 0.5 * DEG },
  { id: 'angle-gauge', name: say.tools['angle-gauge'], kind: 'angle', half: 0.1 * DEG, division: 0.1 * DEG },
  { id: 'luggage-scale', name: say.tools['luggage-scale'], kind: 'force', half: 0.01, relative: true, division: 0.1 },
  { id: 'kitchen-scale', name: say.tools['kitchen-scale'], kind: 'mass', half: 1e-3, division: 1e-3 },
  { id: 'ohmmeter', name: say.tools.ohmmeter, kind: 'resistance', half: 0.01, relative: true, division: 0.1 },
  { id: 'voltmeter', name: say.tools.voltmeter, kind: 'voltage', half: 0.01, relative: true, division: 0.1 },
  { id: 'hygrometer', name: say.tools.hygrometer, kind: 'relative humidity', half: 0.05, division: 0.01 },
  { id: 'room-thermometer', name: say.tools['room-thermometer'], kind: 'temperature', half: 1, division: 0.5 },
  { id: 'thermometer', name: say.tools.thermometer, kind: 'temperature', half: 1, division: 1 },
  { id: 'stopwatch', name: say.tools.stopwatch, kind: 'time', half: 0.3, division: 0.1 },
];

/** Tools that read this kind of quantity, coarsest first. */
export function toolsFor(kind: string): readonly Tool[] {
  return tools.filter((tool) => tool.kind === kind);
}

export function toolById(id: string): Tool | undefined {
  return tools.find((tool) => tool.id === id);
}

/** Half-width of a reading taken with a tool, SI. */
export function halfWidth(tool: Tool, reading: number): number {
  return tool.relative ? Math.abs(reading) * tool.half : tool.half;
}
