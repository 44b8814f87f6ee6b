import say from './words/en';

/** Value and first three derivatives at a point. */
export type Derivatives = readonly [f: number, f1: number, f2: number, f3: number];

/** A smooth function of one dimensionless argument (sqrt and abs excepted, which the dimension rule knows). */
export interface SmoothFunction {
  /** Where it is defined, and the words for where it is not; defined everywhere without it. */
  readonly domain?: { readonly holds: (x: number) => boolean; readonly needs: string };
  /** The value alone, the same to the last bit: for draws by the thousand. */
  readonly value: (x: number) => number;
  readonly derivatives: (x: number) => Derivatives;
}

function tangent(x: number): Derivatives {
  const t = Math.tan(x);
  const s = 1 + t * t;
  return [t, s, 2 * t * s, 2 * s * (1 + 3 * t * t)];
}

function arcsine(x: number): Derivatives {
  const w = 1 - x * x;
  const r = Math.sqrt(w);
  return [Math.asin(x), 1 / r, x / (w * r), (1 + 2 * x * x) / (w * w * r)];
}

function arctangent(x: number): Derivatives {
  const w = 1 + x * x;
  return [Math.atan(x), 1 / w, (-2 * x) / w ** 2, (6 * x * x - 2) / w ** 3];
}

function squareRoot(x: number): Derivatives {
  const r = Math.sqrt(x);
  return [r, 1 / (2 * r), -1 / (4 * x * r), 3 / (8 * x * x * r)];
}

const within1 = (x: number): boolean => Math.abs(x) <= 1;

export const smoothFunctions: Readonly<Record<string, SmoothFunction>> = {
  sqrt: { domain: { holds: (x) => x >= 0, needs: say.needs.sqrt }, value: Math.sqrt, derivatives: squareRoot },
  exp: {
    value: Math.exp,
    derivatives: (x) => {
      const e = Math.exp(x);
      return [e, e, e, e];
    },
  },
  ln: {
    domain: { holds: (x) => x > 0, needs: say.needs.ln },
    value: Math.log,
    derivatives: (x) => [Math.log(x), 1 / x, -1 / x ** 2, 2 / x ** 3],
  },
  sin: {
    value: Math.sin,
    derivatives: (x) => [Math.sin(x), Math.cos(x), -Math.sin(x), -Math.cos(x)],
  },
  cos: {
    value: Math.cos,
    derivatives: (x) => [Math.cos(x), -Math.sin(x), -Math.cos(x), Math.sin(x)],
  },
  tan: {
    domain: { holds: (x) => Math.abs(Math.cos(x)) > 1e-12, needs: say.needs.tan },
    value: Math.tan,
    derivatives: tangent,
  },
  asin: { domain: { holds: within1, needs: say.needs.asin }, value: Math.asin, derivatives: arcsine },
  acos: {
    domain: { holds: within1, needs: say.needs.acos },
    value: (x) => Math.PI / 2 - Math.asin(x),
    derivatives: (x) => {
      const [s, s1, s2, s3] = arcsine(x);
      return [Math.PI / 2 - s, -s1, -s2, -s3];
    },
  },
  atan: { value: Math.atan, derivatives: arctangent },
  abs: {
    value: Math.abs,
    derivatives: (x) => [Math.abs(x), Math.sign(x), 0, 0],
  },
};

/** Functions that step: only allowed around a whole right-hand side, because what follows must know they are whole. */
export const steppingFunctions: Readonly<Record<string, (x: number) => number>> = {
  // Math.round takes -1.5 to -1 and 1.5 to 2; a mirrored reading must give a mirrored whole number.
  round: (x) => Math.sign(x) * Math.round(Math.abs(x)),
  floor: Math.floor,
  ceil: Math.ceil,
};

/** Functions of two arguments with a kink where the two are equal. */
export const choosingFunctions: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  min: (a, b) => a <= b,
  max: (a, b) => a >= b,
};
