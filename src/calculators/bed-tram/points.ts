import { length } from '../../quantity/kinds';
import { input } from '../../engine/calculator';
import { telling, type Told } from '../../engine/order';
import type { InputData, TableData } from '../../engine/spec';
import type words from './words/en';

const { problem } = telling<typeof words>();

export const MOST_POINTS = 25;

const place = { feature: 'span', range: [-500, 2000], spread: 1, signed: 'scale' } as const;

/** What stands between nozzle and bed is a gap to a leaf, and a height to an indicator. */
const heightOrGap = { choice: 'by', of: { gap: 'gap', height: 'height' } } as const;

type CellName = `${'x' | 'y' | 'z'}_${number}`;
type Cell = InputData<never> & Required<Pick<InputData, 'cell'>>;

const line = (n: number): Readonly<Record<CellName, Cell>> => {
  const cell = (column: string) => ({ cell: { table: 'points', line: n, column } });
  return {
    [`x_${n}`]: { ...input(length.mm, place), ...cell('x') },
    [`y_${n}`]: { ...input(length.mm, place), ...cell('y') },
    [`z_${n}`]: {
      ...input(length.mm, { feature: heightOrGap, range: [-20, 20], tool: 'feeler', signed: 'scale' }),
      ...cell('z'),
    },
  };
};

/** Three cells for each of up to 25 points: place on the bed and height there. */
export const cells: Readonly<Record<CellName, Cell>> = Object.fromEntries(
  Array.from({ length: MOST_POINTS }, (_, i) => Object.entries(line(i + 1))).flat(),
);

type Value = (symbol: string) => number | undefined;
type Filled = readonly Readonly<Record<string, number>>[] | { readonly problem: Told };

/** `n` by `n` places, from the front left by rows, the outer ones a margin inside the edges. SI. */
function grid(n: number, value: Value): Filled {
  const [W, D, margin] = [value('W'), value('D'), value('c_m')];
  if (W === undefined || D === undefined || margin === undefined) return { problem: problem('edgesNeeded') };
  if (2 * margin >= Math.min(W, D)) return { problem: problem('marginTooLarge') };
  const at = (i: number, side: number): number => margin + (i * (side - 2 * margin)) / (n - 1);
  return Array.from({ length: n * n }, (_, i) => ({ x: at(i % n, W), y: at(Math.floor(i / n), D) }));
}

const adjusters = (value: Value): { readonly x: number; readonly y: number }[] =>
  [1, 2, 3, 4].flatMap((i) => {
    const [x, y] = [value(`X_${i}`), value(`Y_${i}`)];
    return x === undefined || y === undefined ? [] : [{ x, y }];
  });

/** Beside each adjuster: their places are results. SI. */
function atAdjusters(value: Value): Filled {
  const places = adjusters(value);
  return places.length < 3 ? { problem: problem('adjustersNeeded') } : places;
}

/** The four corners, each with the number of the adjuster nearest to it: what the table calls point 3 the drawing calls 3. SI. */
function fourCorners(value: Value): Filled {
  const filled = grid(2, value);
  if ('problem' in filled) return filled;
  const [fl, fr, bl, br] = filled;
  const left = [fl, fr, br, bl].filter((corner) => corner !== undefined);
  const taken = adjusters(value).flatMap(({ x, y }) => {
    const away = (corner: Readonly<Record<string, number>>): number =>
      Math.hypot((corner.x ?? 0) - x, (corner.y ?? 0) - y);
    const [nearest] = [...left].sort((one, two) => away(one) - away(two));
    return nearest ? left.splice(left.indexOf(nearest), 1) : [];
  });
  return [...taken, ...left];
}

export const tables = {
  points: {
    columns: ['x', 'y', 'z'],
    least: 3,
    presets: {
      adjusters: atAdjusters,
      two: fourCorners,
      three: (value: Value) => grid(3, value),
      four: (value: Value) => grid(4, value),
      five: (value: Value) => grid(5, value),
    },
  },
} satisfies Readonly<Record<string, TableData>>;
