import { numberSeen, type Seen, type SecondModel } from '../../engine/second';

const SLICES = 2000;

/** What is stored between gear and tip under the push that was measured: the rod sliced along its way, each slice pressed by what it carries. */
function stored(given: Readonly<Record<string, Seen>>, drive: string | undefined): number {
  const of = (symbol: string): number => numberSeen(given, symbol);
  const area = Math.PI * (of('d_f') / 2) ** 2;
  const slice = of('L') / SLICES;
  const bent = drive === 'tube' ? of('Theta') : 0;
  // From the hot end back: every bend adds its friction to the push that the slice behind it carries.
  let push = of('F_m');
  let pressed = 0;
  for (let i = 0; i < SLICES; i += 1) {
    const behind = push * (1 + (bent > 0 ? of('mu_t') * (bent / SLICES) : 0));
    pressed += ((push + behind) / 2 / area / of('E')) * slice;
    push = behind;
  }
  // The strand lies along the outer wall when pushed and along the inner when pulled, bend by bend.
  const play = bent > 0 ? (of('D_t') - of('d_f')) / 2 : 0;
  const radius = 0.1;
  const slack = bent * (radius + play) - bent * (radius - play);
  const melt = (of('V') * (of('F_m') / area)) / of('B') / area;
  return pressed + slack + melt + of('s_b');
}

/** The machine with its retraction moved as ordered. Where a push was measured, the length has to lie in the band around what is stored. */
const second: SecondModel = {
  carry: ({ given, choices, movements }): Readonly<Record<string, number>> => {
    const x_set = movements.reduce(
      (at, { direction, amount }) => at + (direction === 'longer' ? amount : -amount),
      numberSeen(given, 'x_set'),
    );
    if (x_set > numberSeen(given, 'x_max') + 1e-9) throw new Error(`${x_set} m pulls the soft end into the cold part`);
    if (choices.source === 'force') {
      const is = stored(given, choices.drive);
      const [least, most] = [
        is - numberSeen(given, 'a_lo'),
        Math.min(is + numberSeen(given, 'a_hi'), numberSeen(given, 'x_max')),
      ];
      const slack = 0.02 * is;
      if (least < most && (x_set < least - slack || x_set > most + slack))
        throw new Error(`${is} m is stored, set ${x_set} m`);
    }
    return { x_set };
  },
};
export default second;
