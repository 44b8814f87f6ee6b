import { numberSeen, type SecondModel } from '../../engine/second';

const RINGS = 40;

/** Share of the water still in a strand after a time, the strand cut into rings that hand water on to each other. */
function stillIn(D: number, radius: number, seconds: number): number {
  const width = radius / RINGS;
  // Implicit in time, so that days are few steps: a band of three, solved from the middle out.
  const steps = 400;
  const k = (D * (seconds / steps)) / width ** 2;
  let water = new Array<number>(RINGS).fill(1);
  for (let step = 0; step < steps; step += 1) {
    const [c, d] = [new Array<number>(RINGS).fill(0), new Array<number>(RINGS).fill(0)];
    for (let i = 0; i < RINGS; i += 1) {
      const [inner, outer] = [i / (i + 0.5), (i + 1) / (i + 0.5)];
      // The surface lies half a ring from the last ring's middle, and is dry.
      const out = i + 1 < RINGS ? outer : 2 * outer;
      const below = -k * inner;
      const pivot = 1 + k * (inner + out) - below * (i > 0 ? (c[i - 1] ?? 0) : 0);
      c[i] = i + 1 < RINGS ? (-k * outer) / pivot : 0;
      d[i] = ((water[i] ?? 0) - below * (i > 0 ? (d[i - 1] ?? 0) : 0)) / pivot;
    }
    const next = new Array<number>(RINGS).fill(0);
    for (let i = RINGS - 1; i >= 0; i -= 1) next[i] = (d[i] ?? 0) - (c[i] ?? 0) * (next[i + 1] ?? 0);
    water = next;
  }
  return water.reduce((sum, one, i) => sum + (one * (2 * i + 1)) / RINGS ** 2, 0);
}

/**
 * An oven with a dial and a clock, and a strand in it cut into rings: set as ordered, the strand is dried ring by ring. An order after which more
 * is left than was wanted, or which softens the strand, is found.
 */
const second: SecondModel = {
  carry: ({ given, movements }) => {
    const turned = (part: string, from: number): number =>
      movements
        .filter((movement) => movement.part === part)
        .reduce(
          (at, { direction, amount }) => at + (direction === 'cooler' || direction === 'shorter' ? -amount : amount),
          from,
        );
    const [T_b, t] = [turned('oven', numberSeen(given, 'T_b')), turned('time', numberSeen(given, 't'))];
    if (T_b > numberSeen(given, 'T_g')) throw new Error(`softened at ${T_b} K`);
    if (movements.some(({ part }) => part === 'time')) {
      const warmed = Math.exp((numberSeen(given, 'E_a') / 8.314462618) * (1 / numberSeen(given, 'T_1') - 1 / T_b));
      const D = (numberSeen(given, 'D_1') * 10 ** numberSeen(given, 'b') * warmed) / numberSeen(given, 'k_s');
      const left = stillIn(D, numberSeen(given, 'd_f') / 2, t);
      if (left > numberSeen(given, 'q')) throw new Error(`${left} is left after ${t} s`);
    }
    return { T_b, t };
  },
};
export default second;
