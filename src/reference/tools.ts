import { readFeatures, type Feature } from './features';
import say from './words/en';

/** A bench tool: what it reads, how far it reaches, and how far the truth may lie from the reading. SI. */
export interface Tool {
  readonly id: string;
  readonly name: string;
  /** Kind of quantity it reads. */
  readonly kind: string;
  readonly features: readonly Feature[];
  /** Least and most that it reads. */
  readonly reach: readonly [least: number, most: number];
  /** One division of its scale: the step of a nudge. */
  readonly division: number;
  /** Half-width that it never goes below. */
  readonly half: number;
  /** Share of the reading, counted from `zero`, where that is more. */
  readonly share?: number;
  readonly zero?: number;
  /** Added to that: what leads or an indicator do. */
  readonly plus?: number;
  /** Added to that where these are read. */
  readonly plusFor?: Readonly<Partial<Record<Feature, number>>>;
  /** Added to that: so many steps of the last figure of a display of 2000 counts, whose finest step is a division. */
  readonly digits?: number;
}

/** Value printed or stamped on the part: taken as exact. */
export const AS_MARKED = 'as-marked';

const COUNTS = 2000;
const MM = 1e-3;
const DEG = Math.PI / 180;
const ZERO_C = 273.15;
const KILOGRAM_FORCE = 9.80665;

/*
 * Reach and half-width as sold for the bench, with what a hand adds: a half-width typed after ± takes their place. Looked up:
 * calipers ± 0.02 to 0.03 mm and 0.02 mm more inside and in depth (DIN 862), micrometers ± 4 µm up to 25 mm (DIN 863-1),
 * type K probes of class 2 ± 2.5 K or 0.0075 |t| from −40 °C (IEC 60584-1:2013, table 12). From memory: indicators (ISO 463),
 * feeler leaves (DIN 2275), tapes of class II, 0.3 mm + 0.2 mm a metre (EN 14), platinum probes of class B, 0.3 K + 0.005 |t|
 * (IEC 60751), meters of 2000 counts. The rest is common practice.
 */
// prettier-ignore
export const tools: readonly Tool[] = [
  { id: 'tape', name: say.tools.tape, kind: 'length', features: ['span', 'outside', 'inside'], reach: [0, 10], division: 1 * MM, half: 1 * MM, share: 3e-4 },
  { id: 'rule', name: say.tools.rule, kind: 'length', features: ['span', 'outside', 'inside', 'depth', 'height', 'travel'], reach: [0, 1], division: 0.5 * MM, half: 0.5 * MM },
  { id: 'caliper', name: say.tools.caliper, kind: 'length', features: ['span', 'outside', 'inside', 'depth', 'height', 'travel'], reach: [0, 150 * MM], division: 0.01 * MM, half: 0.03 * MM, plusFor: { inside: 0.02 * MM, depth: 0.02 * MM, height: 0.02 * MM } },
  { id: 'long-caliper', name: say.tools['long-caliper'], kind: 'length', features: ['span', 'outside', 'inside', 'depth', 'height', 'travel'], reach: [0, 300 * MM], division: 0.01 * MM, half: 0.03 * MM, share: 0.04 / 300, plusFor: { inside: 0.02 * MM, depth: 0.02 * MM, height: 0.02 * MM } },
  { id: 'feeler', name: say.tools.feeler, kind: 'length', features: ['gap'], reach: [0.03 * MM, 1 * MM], division: 0.05 * MM, half: 0.01 * MM },
  { id: 'dial', name: say.tools.dial, kind: 'length', features: ['height', 'travel', 'swing'], reach: [0, 10 * MM], division: 0.01 * MM, half: 0.01 * MM, share: 2e-3 },
  { id: 'micrometer', name: say.tools.micrometer, kind: 'length', features: ['outside'], reach: [0, 25 * MM], division: 0.01 * MM, half: 0.004 * MM },
  { id: 'protractor', name: say.tools.protractor, kind: 'angle', features: ['angle'], reach: [0, 180 * DEG], division: 0.5 * DEG, half: 0.5 * DEG },
  { id: 'angle-gauge', name: say.tools['angle-gauge'], kind: 'angle', features: ['angle'], reach: [0, 180 * DEG], division: 0.1 * DEG, half: 0.1 * DEG },
  { id: 'luggage-scale', name: say.tools['luggage-scale'], kind: 'force', features: ['force'], reach: [0.5 * KILOGRAM_FORCE, 50 * KILOGRAM_FORCE], division: 0.1, half: 0.1, share: 0.01 },
  { id: 'spring-balance', name: say.tools['spring-balance'], kind: 'force', features: ['force'], reach: [0.1, 10], division: 0.1, half: 0.1 },
  { id: 'hanging-scale', name: say.tools['luggage-scale'], kind: 'mass', features: ['mass'], reach: [0.5, 50], division: 0.01, half: 0.01, share: 0.01 },
  { id: 'kitchen-scale', name: say.tools['kitchen-scale'], kind: 'mass', features: ['mass'], reach: [2e-3, 5], division: 1e-3, half: 1e-3, share: 1e-3 },
  { id: 'pocket-scale', name: say.tools['pocket-scale'], kind: 'mass', features: ['mass'], reach: [0.05e-3, 0.2], division: 0.01e-3, half: 0.05e-3, share: 5e-4 },
  { id: 'ohmmeter', name: say.tools.ohmmeter, kind: 'resistance', features: ['resistance'], reach: [0, 200e6], division: 0.1, half: 0, share: 0.01, plus: 0.3, digits: 2 },
  { id: 'ohmmeter-zeroed', name: say.tools['ohmmeter-zeroed'], kind: 'resistance', features: ['resistance'], reach: [0, 200e6], division: 0.1, half: 0, share: 0.01, digits: 2 },
  { id: 'voltmeter', name: say.tools.voltmeter, kind: 'voltage', features: ['voltage'], reach: [0, 600], division: 0.01, half: 0, share: 0.01, digits: 2 },
  { id: 'hygrometer', name: say.tools.hygrometer, kind: 'relative humidity', features: ['humidity'], reach: [0.1, 0.95], division: 0.01, half: 0.05 },
  { id: 'thermometer', name: say.tools.thermometer, kind: 'temperature', features: ['contact', 'air'], reach: [ZERO_C - 40, ZERO_C + 400], division: 1, half: 2.5, share: 0.0075, zero: ZERO_C, plus: 1 },
  { id: 'room-thermometer', name: say.tools['room-thermometer'], kind: 'temperature', features: ['air'], reach: [ZERO_C - 20, ZERO_C + 60], division: 0.5, half: 1 },
  { id: 'platinum-probe', name: say.tools['platinum-probe'], kind: 'temperature', features: ['contact', 'air'], reach: [ZERO_C - 50, ZERO_C + 400], division: 0.1, half: 0, share: 0.005, zero: ZERO_C, plus: 0.5 },
  { id: 'clock', name: say.tools.clock, kind: 'time', features: ['time'], reach: [60, 1e8], division: 60, half: 60 },
  { id: 'stopwatch', name: say.tools.stopwatch, kind: 'time', features: ['time'], reach: [0, 36_000], division: 0.1, half: 0.3 },
];

const isRead = (feature: Feature): boolean => readFeatures.some((one) => one === feature);

/** Tools that read this kind of quantity, of a thing's features where those are named; coarsest first. */
export function toolsFor(kind: string, features?: readonly Feature[]): readonly Tool[] {
  return tools.filter((tool) => tool.kind === kind && (features === undefined || readsFeature(tool, features)));
}

/** True where it reads one of these features. */
export function readsFeature(tool: Tool, features: readonly Feature[]): boolean {
  return features.some((feature) => isRead(feature) && tool.features.includes(feature));
}

/** True where a reading of this size lies in its reach. SI; scales that count from another zero are not signed. */
export function reaches(tool: Tool, reading: number): boolean {
  const [least, most] = tool.reach;
  const size = tool.zero === undefined ? Math.abs(reading) : reading;
  const slack = 1e-9 * most;
  return size >= least - slack && size <= most + slack;
}

export function toolById(id: string): Tool | undefined {
  return tools.find((tool) => tool.id === id);
}

/** The last figure's step in the range that shows this reading. */
function lastFigure(tool: Tool, size: number): number {
  let step = tool.division;
  while (Number.isFinite(size) && size >= COUNTS * step) step *= 10;
  return step;
}

/** Half-width of one reading taken with a tool, of a thing's features where those are named. SI. */
export function halfWidth(tool: Tool, reading: number, features: readonly Feature[] = []): number {
  const size = Math.abs(reading - (tool.zero ?? 0));
  const more = features.map((feature) => tool.plusFor?.[feature] ?? 0);
  const shown = tool.digits === undefined ? 0 : tool.digits * lastFigure(tool, size);
  return Math.max(tool.half, (tool.share ?? 0) * size) + (tool.plus ?? 0) + Math.max(0, ...more) + shown;
}
