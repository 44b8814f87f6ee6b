import { temperature, time } from '../../quantity/kinds';
import { input } from '../../engine/calculator';
import type { InputData } from '../../engine/spec';

/** Lines of the table of readings. */
const LINES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20] as const;
type Line = (typeof LINES)[number];
type CellName = `t_${Line}` | `T_${Line}`;
type Cell = InputData<never> & Required<Pick<InputData, 'cell'>>;

/** Symbols of each line of readings. */
export const lines = LINES.map((line) => ({ time: `t_${line}`, temperature: `T_${line}` }) as const);

const shown = { feature: 'shown', optional: true, spread: 0.5, range: [-20, 700] } as const;
const stopped = { feature: 'time', optional: true, spread: 0.3, range: [0, 1e5] } as const;

/** The readings of a curve: a time and the temperature shown then. */
export const cells = Object.fromEntries(
  LINES.flatMap((line): [CellName, Cell][] => {
    const cell = (column: string) => ({ cell: { table: 'curve', line, column } });
    return [
      [`t_${line}`, { ...input(time.s, stopped), ...cell('time') }],
      [`T_${line}`, { ...input(temperature.C, shown), ...cell('temperature') }],
    ];
  }),
) as Record<CellName, Cell>;
