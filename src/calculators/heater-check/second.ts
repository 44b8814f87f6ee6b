import { numberSeen, type Seen, type SecondModel } from '../../engine/second';

const STEFAN = 5.670374419e-8;
const DT = 0.02;

type Given = Readonly<Record<string, Seen>>;

/** A block as it cools and is heated, by small steps in time with all of its radiation; the loss as its own readings give it. */
function blockOf(given: Given, loss: string | undefined) {
  const [Ta, Tw] = [numberSeen(given, 'T_a'), numberSeen(given, 'T_w')];
  const P = numberSeen(given, 'V') ** 2 / numberSeen(given, 'R_h');
  const [a, b, c] = [numberSeen(given, 'a_1'), numberSeen(given, 'a_2'), numberSeen(given, 'a_3')];
  const faces = [a * b, a * b, b * c, b * c, a * c, a * c].reduce((sum, face) => sum + face, 0);
  const radiates = (T: number) => numberSeen(given, 'epsilon') * STEFAN * faces * (T ** 4 - Ta ** 4);
  const C = numberSeen(given, 'm_b') * numberSeen(given, 'c_b') + numberSeen(given, 'm_x') * numberSeen(given, 'c_x');
  const conducts =
    loss === 'surface'
      ? numberSeen(given, 'h_c') * faces + numberSeen(given, 'G_x')
      : (numberSeen(given, 'D_h') * P - radiates(Tw)) / (Tw - Ta);
  return { Ta, Tw, warms: (T: number) => (P - conducts * (T - Ta) - radiates(T)) / C };
}

/** How hot the block is when the guard acts after its sensor fell out, by the clock. */
function actsAt(
  given: Given,
  loss: string | undefined,
  time: number,
  lag: number,
): { readonly t: number; readonly T: number } {
  const { Ta, Tw, warms } = blockOf(given, loss);
  let [T, reads, low, t] = [Tw, Tw, 0, 0];
  while (low < time) {
    T += warms(T) * DT;
    reads += ((Ta - reads) / numberSeen(given, 't_s')) * DT;
    t += DT;
    low = reads < Tw - lag ? low + DT : 0;
  }
  return { t, T };
}

/**
 * A guard that is set by turning its numbers up or down. Where the loss is known, the machine is then run with its sensor
 * fallen out: an order that leaves the guard slower, or its block hotter than before an order to shorten it, is found.
 */
const second: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const turned = (part: string, from: number): number =>
      movements
        .filter((movement) => movement.part === part)
        .reduce((at, { direction, amount }) => at + (direction === 'raise' ? amount : -amount), from);
    const time = turned('time', numberSeen(given, 't_g'));
    const rise = turned('rise', numberSeen(given, 'dT_g'));
    if (choices.loss === 'surface' || choices.loss === 'held') {
      const found = actsAt(given, choices.loss, time, numberSeen(given, 'dT_l'));
      // Its time by the clock is that of the sheet's exponential.
      if (found.t > numberSeen(given, 't_max') + 2 * DT) throw new Error(`cuts after ${found.t} s`);
    }
    return { t_g: time, dT_g: rise };
  },
};
export default second;
