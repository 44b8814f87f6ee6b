import { telling } from '../../engine/order';
import type { TableData } from '../../engine/spec';
import { LEAST } from './model';
import type words from './words/en';

const { problem } = telling<typeof words>();

/** Steps between taps where the temperatures to wait for are written beforehand, K. */
const STEP = 10;
/** From here on heater and sensor no longer lag much, K. */
const START = 323.15;
const MOST_LINES = 20;

export const tables = {
  curve: {
    columns: ['time', 'temperature'],
    least: LEAST,
    stopwatch: 'time',
    presets: {
      upwards: (value: (symbol: string) => number | undefined) => {
        const high = value('T_w');
        if (high === undefined) return { problem: problem('workingNeeded') };
        const count = Math.floor((high - START) / STEP + 1e-9) + 1;
        if (count < LEAST) return { problem: problem('workingTooLow') };
        return Array.from({ length: Math.min(count, MOST_LINES) }, (_, i) => ({ temperature: START + i * STEP }));
      },
    },
  },
} satisfies Readonly<Record<string, TableData>>;
