/** A hot block as a lump: C dT/dt = P − G (T − T_a) − R (T⁴ − T_a⁴). SI. */
export interface Lump {
  /** Heat capacity, J/K. */
  readonly C: number;
  /** Heater, W. */
  readonly P: number;
  /** Loss to the air and along the parts, W/K. */
  readonly G: number;
  /** Emissivity × Stefan–Boltzmann constant × surface, W/K⁴. */
  readonly R: number;
  /** Room, K. */
  readonly Ta: number;
}

export interface Moment {
  readonly t: number;
  readonly T: number;
}

/** Rate of change, K/s. */
function slope({ C, P, G, R, Ta }: Lump, T: number): number {
  return (P - G * (T - Ta) - R * (T ** 4 - Ta ** 4)) / C;
}

/**
 * The block's temperature from `start` on, by Runge and Kutta's rule of fourth order at equal steps, radiation and all.
 *
 * @returns `steps` + 1 moments, the first at `start.t`
 */
export function simulate(lump: Lump, start: Moment, seconds: number, steps: number): readonly Moment[] {
  const h = seconds / steps;
  const moments = [start];
  let { T } = start;
  for (let i = 1; i <= steps; i += 1) {
    const a = slope(lump, T);
    const b = slope(lump, T + (h / 2) * a);
    const c = slope(lump, T + (h / 2) * b);
    const d = slope(lump, T + h * c);
    T += (h / 6) * (a + 2 * b + 2 * c + d);
    moments.push({ t: start.t + i * h, T });
  }
  return moments;
}
