import { temperature, time } from '../../quantity/kinds';
import { input, type InputSpec } from '../../engine/calculator';

/** Lines of the table of readings. */
const LINES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20] as const;
type Line = (typeof LINES)[number];
type Cell = `t_${Line}` | `T_${Line}`;

/** Symbols of each line of readings. */
export const lines = LINES.map((line) => ({ time: `t_${line}`, temperature: `T_${line}` }) as const);

/** The readings of a curve: a time and the temperature shown then. */
export const cells = Object.fromEntries(
  LINES.flatMap((line): [Cell, InputSpec][] => [
    [
      `t_${line}`,
      input(`Reading ${line}: time`, time.s, {
        optional: true,
        spread: 0.3,
        range: [0, 1e5],
        cell: { table: 'curve', line, column: 'time' },
      }),
    ],
    [
      `T_${line}`,
      input(`Reading ${line}: temperature`, temperature.C, {
        optional: true,
        spread: 0.5,
        range: [-20, 700],
        cell: { table: 'curve', line, column: 'temperature' },
      }),
    ],
  ]),
) as Record<Cell, InputSpec>;
