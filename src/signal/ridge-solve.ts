/** A symmetric matrix of `size` by `size`, row by row. */
export interface Symmetric {
  readonly size: number;
  readonly cells: Float64Array;
}

/**
 * The inverse of a symmetric positive definite matrix by Cholesky's decomposition (Golub and Van Loan, Matrix
 * Computations, section 4.2, from memory); undefined where it is not positive definite.
 */
export function inverse({ size, cells }: Symmetric): Symmetric | undefined {
  const at = (a: Float64Array, r: number, c: number) => a[r * size + c] ?? 0;
  const lower = new Float64Array(size * size);
  for (let r = 0; r < size; r += 1) {
    for (let c = 0; c <= r; c += 1) {
      let sum = at(cells, r, c);
      for (let k = 0; k < c; k += 1) sum -= at(lower, r, k) * at(lower, c, k);
      if (r === c && !(sum > 1e-13 * at(cells, r, r))) return undefined;
      lower[r * size + c] = r === c ? Math.sqrt(sum) : sum / at(lower, c, c);
    }
  }
  const inverted = new Float64Array(size * size);
  for (let column = 0; column < size; column += 1) {
    const x = new Float64Array(size);
    for (let r = 0; r < size; r += 1) {
      let sum = r === column ? 1 : 0;
      for (let k = 0; k < r; k += 1) sum -= at(lower, r, k) * (x[k] ?? 0);
      x[r] = sum / at(lower, r, r);
    }
    for (let r = size - 1; r >= 0; r -= 1) {
      let sum = x[r] ?? 0;
      for (let k = r + 1; k < size; k += 1) sum -= at(lower, k, r) * (x[k] ?? 0);
      x[r] = sum / at(lower, r, r);
    }
    for (let r = 0; r < size; r += 1) inverted[r * size + column] = x[r] ?? 0;
  }
  return { size, cells: inverted };
}

/** Matrix times vector. */
export function times({ size, cells }: Symmetric, vector: ArrayLike<number>): Float64Array {
  const out = new Float64Array(size);
  for (let r = 0; r < size; r += 1) {
    let sum = 0;
    for (let c = 0; c < size; c += 1) sum += (cells[r * size + c] ?? 0) * (vector[c] ?? 0);
    out[r] = sum;
  }
  return out;
}

/** All products of columns with one another: JᵀJ. */
export function gram(columns: readonly Float64Array[]): Symmetric {
  const size = columns.length;
  const cells = new Float64Array(size * size);
  columns.forEach((a, r) => {
    for (let c = 0; c <= r; c += 1) {
      const sum = dot(a, columns[c] ?? a);
      cells[r * size + c] = sum;
      cells[c * size + r] = sum;
    }
  });
  return { size, cells };
}

/** Sum of the products of two vectors of the same length. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** Legendre-like powers up to `order`, made orthogonal by recurrence, over -1 to 1: what slow shading is fitted by. */
export function slowColumns(n: number, order: number): Float64Array[] {
  const columns: Float64Array[] = [];
  for (let k = 0; k <= order; k += 1) {
    columns.push(
      Float64Array.from({ length: n }, (_, i) => {
        const x = n > 1 ? (2 * i) / (n - 1) - 1 : 0;
        // Bonnet's recurrence for Legendre polynomials.
        let before = 1;
        let now = x;
        if (k === 0) return 1;
        for (let m = 1; m < k; m += 1) [before, now] = [now, ((2 * m + 1) * x * now - m * before) / (m + 1)];
        return now;
      }),
    );
  }
  return columns;
}

/** Values less their least-squares fit by the columns. */
export function without(values: Float64Array, columns: readonly Float64Array[]): Float64Array {
  const inverted = inverse(gram(columns));
  const out = Float64Array.from(values);
  if (!inverted) return out;
  const weights = times(
    inverted,
    columns.map((column) => dot(column, values)),
  );
  columns.forEach((column, k) => {
    const weight = weights[k] ?? 0;
    for (let i = 0; i < out.length; i += 1) out[i] = (out[i] ?? 0) - weight * (column[i] ?? 0);
  });
  return out;
}
