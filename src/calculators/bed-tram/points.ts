import { length } from '../../quantity/kinds';
import { input, type InputSpec, type TableSpec } from '../../engine/calculator';

export const MOST_POINTS = 25;

const place = { range: [-500, 2000], spread: 1, signed: true } as const;

const line = (n: number): Record<string, InputSpec> => ({
  [`x_${n}`]: input(`Point ${n}, from the left edge`, length.mm, {
    ...place,
    cell: { table: 'points', line: n, column: 'x' },
  }),
  [`y_${n}`]: input(`Point ${n}, from the front edge`, length.mm, {
    ...place,
    cell: { table: 'points', line: n, column: 'y' },
  }),
  [`z_${n}`]: input(`Point ${n}, height or gap`, length.mm, {
    range: [-20, 20],
    tool: 'feeler',
    signed: true,
    cell: { table: 'points', line: n, column: 'z' },
  }),
});

type CellName = `${'x' | 'y' | 'z'}_${number}`;

/** Three cells for each of up to 25 points: place on the bed and height there. */
export const cells: Readonly<Record<CellName, InputSpec>> = Object.fromEntries(
  Array.from({ length: MOST_POINTS }, (_, i) => Object.entries(line(i + 1))).flat(),
);

type Value = (symbol: string) => number | undefined;
type Filled = readonly Readonly<Record<string, number>>[] | { readonly reason: string };

/** `n` by `n` places, from the front left by rows, the outer ones a margin inside the edges. SI. */
function grid(n: number, value: Value): Filled {
  const [W, D, margin] = [value('W'), value('D'), value('c_m')];
  if (W === undefined || D === undefined || margin === undefined)
    return { reason: 'Bed width, depth and margin are needed first.' };
  if (2 * margin >= Math.min(W, D)) return { reason: 'The margin leaves nothing of the bed: make it smaller.' };
  const at = (i: number, side: number): number => margin + (i * (side - 2 * margin)) / (n - 1);
  return Array.from({ length: n * n }, (_, i) => ({ x: at(i % n, W), y: at(Math.floor(i / n), D) }));
}

/** Beside each adjuster: their places are results. SI. */
function atAdjusters(value: Value): Filled {
  const places = [1, 2, 3, 4].flatMap((i) => {
    const [x, y] = [value(`X_${i}`), value(`Y_${i}`)];
    return x === undefined || y === undefined ? [] : [{ x, y }];
  });
  return places.length < 3 ? { reason: 'The places of the adjusters are needed first.' } : places;
}

export const tables: Readonly<Record<string, TableSpec>> = {
  points: {
    label: 'Points of the bed',
    line: 'Point',
    columns: { x: 'x, from left', y: 'y, from front', z: 'Height or gap' },
    least: 3,
    hint: 'Bed warm as for printing, everything clean. x runs from the left edge to the right, y from the front to the back. Any height may count as zero; bring every point up from the same side.',
    presets: {
      'at the adjusters': atAdjusters,
      '4 corners': (value) => grid(2, value),
      '3 × 3': (value) => grid(3, value),
      '4 × 4': (value) => grid(4, value),
      '5 × 5': (value) => grid(5, value),
    },
  },
};
