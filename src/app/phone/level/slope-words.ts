import type { MotionFault } from '../../../instrument/motion';
import { formatMeasured } from '../../../quantity/format';
import { angle, slope } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import type { Level } from '../../../signal/level-reversal';

/** Why there is no level, and what to do; typing by hand is named by the panel itself. */
export const faultWords: Readonly<Record<MotionFault, string>> = {
  insecure: 'The motion sensor is only given to a page that came over a secure connection (https). Open it that way.',
  unknown: 'This browser has no way to the motion sensor. Another browser on this phone may have.',
  barred: 'The page or the server that shows this one keeps the motion sensor back. Open Trammel by itself.',
  refused:
    'The motion sensor was refused. Allow motion sensors for this site in the browser’s settings, load the page anew, and start again.',
  silent:
    'No numbers come from a motion sensor. A desk computer has none; on a phone, look whether the browser’s settings allow motion sensors for this site.',
  stopped: 'The motion sensor stopped. Start again; what was read before is kept.',
};

export const NEVER_STILL =
  'The phone did not come to rest. Switch off what shakes the machine (fans, steppers, another printer), keep hands off the table, and read again.';
export const NOT_LYING = 'The phone does not lie on its back. Lay it flat, screen up, and read again.';

const mmPerM = slope.mm_m.unit;

/** "2.31 ± 0.40 mm/m" */
export function slopeText(value: number, halfWidth: number, mark: DecimalMark): string {
  return formatMeasured(value, halfWidth, mmPerM, { mark });
}

/** The same as an angle: "(0.132 ± 0.023)°". */
export function angleText(value: number, halfWidth: number, mark: DecimalMark): string {
  return formatMeasured(Math.atan(value), halfWidth / (1 + value ** 2), angle.deg.unit, { mark });
}

/** Which end is high, or that it cannot be told. */
export function endWords(level: Level): string {
  if (Math.abs(level.slope) <= level.halfWidth) return 'neither end is high beyond the ±, level as far as this tells.';
  return level.slope > 0 ? 'the right end is high.' : 'the left end is high.';
}

/** Tilt across the bar from which the direction of laying begins to matter. */
const LEANING = 0.02;

/** What the two axes say of the laying: whether the pairs agree, and whether it leans across the bar. */
export function layingWords(level: Level): readonly string[] {
  const words: string[] = [];
  if (level.disagreement === undefined) {
    words.push('One pair cannot show whether the phone rocked: take a second one.');
  } else if (level.disagreement > 1) {
    words.push(
      'The pairs do not agree on the sensor’s own error: the phone rocked, or what it lies on is not flat there. Clean both, mark the place with a pen, and read again.',
    );
  } else {
    words.push('The pairs agree, along and across.');
  }
  if (Math.abs(level.across) > LEANING) {
    words.push(
      `Across the bar it leans by ${Math.round(Math.abs(level.across) * 1000)}\u00a0mm/m: the phone hangs over or rocks sideways, or the bar does. Lean makes the direction of the phone count; level it across if you can.`,
    );
  }
  return words;
}

/** What the ± is made of, largest first: name and 95 % share, as slopes; nothing below a hundredth of it. */
export function budgetOf(level: Level): readonly { readonly name: string; readonly half: number }[] {
  const { repeat, steps, direction, scale } = level.parts;
  const rows = [
    { name: level.seen ? 'the spread of the pairs' : 'noise, and laying the phone down', half: 2 * repeat },
    { name: 'steps in which this browser passes the numbers on', half: 2 * steps },
    { name: 'direction of the phone, with the lean across', half: 2 * direction },
    { name: 'scale of the sensor', half: 2 * scale },
  ];
  return rows.filter(({ half }) => half > 0.01 * level.halfWidth).sort((a, b) => b.half - a.half);
}

/** True where more pairs help little: the steps, which repeating does not average out, are most of it. */
export function stepsRule(level: Level): boolean {
  const { repeat, steps, direction, scale } = level.parts;
  return steps > Math.hypot(repeat, direction, scale);
}
