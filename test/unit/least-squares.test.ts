import fc from 'fast-check';
import { inv, matrix, multiply, type Matrix } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { dot, gram, inverse, slowColumns, times, without, type Symmetric } from '../../src/signal/ridge-solve';

const symmetric = (rows: readonly (readonly number[])[]): Symmetric => ({
  size: rows.length,
  cells: Float64Array.from(rows.flat()),
});
const rowsOf = ({ size, cells }: Symmetric): number[][] =>
  Array.from({ length: size }, (_, r) => [...cells.subarray(r * size, (r + 1) * size)]);

/** Columns far enough from one another that their products can be inverted: one heavy place each. */
const columns = (size: number) =>
  fc
    .array(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: size + 3, maxLength: size + 3 }), {
      minLength: size,
      maxLength: size,
    })
    .map((all) => all.map((column, k) => Float64Array.from(column, (x, i) => (i === k ? 8 + x : x))));

describe('what least squares are solved with', () => {
  it('inverts as mathjs does, one to five unknowns', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }).chain((size) => columns(size)),
        (all) => {
          const products = gram(all);
          const wanted = (inv(matrix(rowsOf(products))) as Matrix<number>).toArray().flat(2);
          const found = inverse(products);
          expect(found?.size).toBe(all.length);
          found!.cells.forEach((cell, i) => expect(cell).toBeCloseTo(Number(wanted[i]), 10));
        },
      ),
    );
  });

  it('multiplies columns with one another, and a matrix with a vector, as mathjs does', () => {
    const all = [Float64Array.of(1, 2, 3), Float64Array.of(-1, 0.5, 4)];
    expect(dot(all[0]!, all[1]!)).toBe(12);
    expect(rowsOf(gram(all))).toEqual([
      [14, 12],
      [12, 17.25],
    ]);
    const square = symmetric([
      [2, -1, 0.5],
      [-1, 3, 0],
      [0.5, 0, 4],
    ]);
    expect([...times(square, [1, -2, 3])]).toEqual(multiply(rowsOf(square), [1, -2, 3]));
  });

  it('gives none for what has no inverse: twice the same column, a nought, a square below nought', () => {
    const column = Float64Array.of(1, 2, 3);
    expect(inverse(gram([column, column]))).toBeUndefined();
    expect(inverse(gram([column, Float64Array.from(column, (x) => -3 * x)]))).toBeUndefined();
    expect(inverse(symmetric([[0]]))).toBeUndefined();
    expect(
      inverse(
        symmetric([
          [1, 2],
          [2, 1],
        ]),
      ),
    ).toBeUndefined();
    // Small is not the same as none: the size of the numbers is no matter.
    expect(inverse(symmetric([[1e-20]]))?.cells[0]).toBeCloseTo(1e20, -10);
    expect(inverse(gram([column, Float64Array.of(1, 2, 3.001)]))).toBeDefined();
  });

  it('makes Legendre’s polynomials over -1 to 1 (handbook: P2 = (3x² − 1)/2, P3 = (5x³ − 3x)/2)', () => {
    const n = 21;
    const at = Array.from({ length: n }, (_, i) => -1 + i / 10);
    const [p0, p1, p2, p3, ...more] = slowColumns(n, 3);
    expect(more).toEqual([]);
    at.forEach((x, i) => {
      expect(p0![i]).toBe(1);
      expect(p1![i]).toBeCloseTo(x, 12);
      expect(p2![i]).toBeCloseTo((3 * x ** 2 - 1) / 2, 12);
      expect(p3![i]).toBeCloseTo((5 * x ** 3 - 3 * x) / 2, 12);
    });
    expect([...slowColumns(1, 2).map(([one]) => one)]).toEqual([1, 0, -0.5]);
  });

  it('takes out what the columns make up and leaves the rest', () => {
    const slow = slowColumns(40, 2);
    const rest = Float64Array.from({ length: 40 }, (_, i) => Math.sin(i * 2.1));
    const shaded = rest.map((y, i) => y + 5 - 3 * (slow[1]![i] ?? 0) + 2 * (slow[2]![i] ?? 0));
    const left = without(shaded, slow);
    for (const column of slow) expect(dot(left, column)).toBeCloseTo(0, 10);
    const same = without(rest, slow);
    left.forEach((y, i) => expect(y).toBeCloseTo(same[i]!, 10));
    // Columns that cannot be told apart take nothing out.
    expect([...without(rest, [rest, rest])]).toEqual([...rest]);
  });
});
