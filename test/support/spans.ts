/** A span of belt: mass per metre, length, tension, bending stiffness. SI. */
export interface Span {
  readonly mu: number;
  readonly L: number;
  readonly T: number;
  readonly EI: number;
}

/** First note of a span with hinged ends: the exact sine. Hz. */
export function hingedNote({ mu, L, T, EI }: Span): number {
  return Math.sqrt((T + (Math.PI ** 2 * EI) / L ** 2) / mu) / (2 * L);
}

/**
 * First note of a span with held ends: root of the Euler-Bernoulli frequency equation with tension,
 * 2ab(1 − cosh aL cos bL) + (a² − b²) sinh aL sin bL = 0, divided by cosh aL. Hz.
 */
export function heldNote({ mu, L, T, EI }: Span): number {
  const equation = (f: number): number => {
    const w = 2 * Math.PI * f;
    const half = T / (2 * EI);
    const root = Math.sqrt(half ** 2 + (mu * w ** 2) / EI);
    const [a, b] = [Math.sqrt(root + half), Math.sqrt(root - half)];
    return 2 * a * b * (1 / Math.cosh(a * L) - Math.cos(b * L)) + (a * a - b * b) * Math.tanh(a * L) * Math.sin(b * L);
  };
  // Above the string's note, below that of 1.5 times the stiffness correction's series.
  const string = Math.sqrt(T / mu) / (2 * L);
  const epsilon = Math.sqrt(EI / T) / L;
  let [low, high] = [string, string * (1 + 4 * epsilon + 20 * epsilon ** 2)];
  if (equation(low) * equation(high) > 0) throw new Error('no root between the bounds');
  for (let i = 0; i < 200; i += 1) {
    const middle = (low + high) / 2;
    if (equation(low) * equation(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Solves A x = b for a banded symmetric positive matrix by elimination; rows as arrays. */
function solveBanded(matrix: readonly (readonly number[])[], b: readonly number[], band: number): number[] {
  const n = b.length;
  const A = matrix.map((row) => [...row]);
  const x = [...b];
  for (let i = 0; i < n; i += 1) {
    for (let j = i + 1; j < Math.min(n, i + band + 1); j += 1) {
      const factor = A[j]![i]! / A[i]![i]!;
      for (let k = i; k < Math.min(n, i + band + 1); k += 1) A[j]![k]! -= factor * A[i]![k]!;
      x[j]! -= factor * x[i]!;
    }
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < Math.min(n, i + band + 1); k += 1) x[i]! -= A[i]![k]! * x[k]!;
    x[i]! /= A[i]![i]!;
  }
  return x;
}

/** Stiffness and mass matrices of `count` tensioned beam elements, without the ends' freedoms. */
function assembled({ mu, L, T, EI }: Span, ends: 'held' | 'hinged', count: number) {
  const h = L / count;
  const size = 2 * count + 2;
  const zero = () => Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const [K, M] = [zero(), zero()];
  const bend = [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]]; // prettier-ignore
  const pull = [[36, 3 * h, -36, 3 * h], [3 * h, 4 * h * h, -3 * h, -h * h], [-36, -3 * h, 36, -3 * h], [3 * h, -h * h, -3 * h, 4 * h * h]]; // prettier-ignore
  const inertia = [[156, 22 * h, 54, -13 * h], [22 * h, 4 * h * h, 13 * h, -3 * h * h], [54, 13 * h, 156, -22 * h], [-13 * h, -3 * h * h, -22 * h, 4 * h * h]]; // prettier-ignore
  for (let e = 0; e < count; e += 1) {
    for (let i = 0; i < 4; i += 1) {
      for (let j = 0; j < 4; j += 1) {
        K[2 * e + i]![2 * e + j]! += (EI / h ** 3) * bend[i]![j]! + (T / (30 * h)) * pull[i]![j]!;
        M[2 * e + i]![2 * e + j]! += ((mu * h) / 420) * inertia[i]![j]!;
      }
    }
  }
  const fixed = new Set([0, 2 * count, ...(ends === 'held' ? [1, 2 * count + 1] : [])]);
  const free = Array.from({ length: size }, (_, i) => i).filter((i) => !fixed.has(i));
  const cut = (matrix: number[][]) => free.map((i) => free.map((j) => matrix[i]![j]!));
  return { K: cut(K), M: cut(M), free };
}

/** Way of the middle under 1 N there, by 300 beam elements with tension. m. */
export function pressedIn(span: Span, ends: 'held' | 'hinged', count = 300): number {
  const { K, free } = assembled(span, ends, count);
  const middle = free.indexOf(count);
  return solveBanded(
    K,
    free.map((_, i) => (i === middle ? 1 : 0)),
    4,
  )[middle]!;
}

/** First note by 120 beam elements with tension, inverse iteration and Rayleigh's quotient. Hz. */
export function beam(span: Span, ends: 'held' | 'hinged', count = 120): number {
  const { K: k, M: m, free } = assembled(span, ends, count);
  const times = (matrix: number[][], v: number[]) =>
    matrix.map((row, i) => {
      let sum = 0;
      for (let j = Math.max(0, i - 4); j < Math.min(v.length, i + 5); j += 1) sum += row[j]! * v[j]!;
      return sum;
    });
  const dot = (a: number[], b: number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
  let shape = free.map((i) => (i % 2 === 0 ? Math.sin((Math.PI * i) / (2 * count)) : 0));
  for (let i = 0; i < 12; i += 1) {
    shape = solveBanded(k, times(m, shape), 4);
    const norm = Math.sqrt(dot(shape, times(m, shape)));
    shape = shape.map((x) => x / norm);
  }
  return Math.sqrt(dot(shape, times(k, shape))) / (2 * Math.PI);
}
