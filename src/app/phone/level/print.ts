import { formatMeasured } from '../../../quantity/format';
import { angle, slope } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import type { Level } from '../../../signal/level-reversal';
import say from './words/en';

/** "2.31 ± 0.40 mm/m" */
export function printSlope(value: number, halfWidth: number, mark: DecimalMark): string {
  return formatMeasured(value, halfWidth, slope.mm_m.unit, { mark });
}

/** The same as an angle: "(0.132 ± 0.023)°". */
export function printAngle(value: number, halfWidth: number, mark: DecimalMark): string {
  return formatMeasured(Math.atan(value), halfWidth / (1 + value ** 2), angle.deg.unit, { mark });
}

/** Which end is high, or that it cannot be told. */
export function sayEnd(level: Level, pairs: number): string {
  if (Math.abs(level.slope) <= level.halfWidth) return say.result.neither(pairs);
  return level.slope > 0 ? say.result.rightHigh(pairs) : say.result.leftHigh(pairs);
}

/** Tilt across the bar from which the direction of laying begins to matter. */
const LEANING = 0.02;

function sayPairs(disagreement: number | undefined): string {
  if (disagreement === undefined) return say.result.onePair;
  return disagreement > 1 ? say.result.disagree : say.result.agree;
}

/** What the two axes say of the laying: whether the pairs agree, and whether it leans across the bar. */
export function sayLaying(level: Level): readonly string[] {
  const across = Math.abs(level.across);
  const pairs = sayPairs(level.disagreement);
  return across > LEANING ? [pairs, say.result.leans(`${Math.round(across * 1000)}\u00a0mm/m`)] : [pairs];
}

/** What the ± is made of, largest first: name and 95 % share, as slopes; nothing below a hundredth of it. */
export function budgetOf(level: Level): readonly { readonly name: string; readonly half: number }[] {
  const { repeat, steps, direction, scale, drift } = level.parts;
  const rows = [
    { name: level.seen ? say.budget.spread : say.budget.noise, half: 2 * repeat },
    { name: say.budget.steps, half: 2 * steps },
    { name: say.budget.direction, half: 2 * direction },
    { name: say.budget.scale, half: 2 * scale },
    { name: say.budget.drift, half: 2 * drift },
  ];
  return rows.filter(({ half }) => half > 0.01 * level.halfWidth).sort((a, b) => b.half - a.half);
}

/** True where more pairs help little: the steps, which repeating does not average out, are most of it. */
export function stepsRule(level: Level): boolean {
  const { repeat, steps, direction, scale, drift } = level.parts;
  return steps > Math.hypot(repeat, direction, scale, drift);
}
