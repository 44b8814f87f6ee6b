import type { Seen, SecondModel } from '../../engine/second';

const PIECES = 30;
const STRIPS = 400;

type Given = Readonly<Record<string, number>>;

/** Width of a section at a height above its middle. */
const widthAt = (round: boolean, size: number, y: number): number =>
  Math.abs(y) > size / 2 ? 0 : round ? 2 * Math.sqrt(size ** 2 / 4 - y ** 2) : size;

/** Area and second moment of an outline less its hollow, strip by strip. */
function section(round: boolean, outer: number, hollow: number) {
  const dy = outer / STRIPS;
  return Array.from({ length: STRIPS }, (_, i) => (i + 0.5) * dy - outer / 2).reduce(
    ({ A, I }, y) => {
      const wide = (widthAt(round, outer, y) - widthAt(round, hollow, y)) * dy;
      return { A: A + wide, I: I + wide * y ** 2 };
    },
    { A: 0, I: 0 },
  );
}

/** How far a clamped bar gives at one place under a newton at another, by the area of the moment diagram. */
function gives(EI: number, at: number, pushed: number): number {
  const [near, far] = [Math.min(at, pushed), Math.max(at, pushed)];
  const dz = near / PIECES;
  return Array.from({ length: PIECES }, (_, i) => (i + 0.5) * dz).reduce(
    (sum, z) => sum + ((far - z) * (near - z) * dz) / EI,
    0,
  );
}

/** Own frequency of the bar cut into lumps: the shape that swings is found by letting it swing. Hz. */
function swings(EI: number, mu: number, L: number): number {
  const at = Array.from({ length: PIECES }, (_, i) => ((i + 0.5) * L) / PIECES);
  const lump = (mu * L) / PIECES;
  const flex = at.map((a) => at.map((c) => gives(EI, a, c) * lump));
  let shape = at.map((z) => z ** 2);
  let square = 0;
  for (let round = 0; round < 12; round += 1) {
    const next = flex.map((row) => row.reduce((sum, one, i) => sum + one * (shape[i] ?? 0), 0));
    const size = Math.hypot(...next);
    square = Math.hypot(...shape) / size;
    shape = next.map((one) => one / size);
  }
  return Math.sqrt(square) / (2 * Math.PI);
}

/** What is wrong with the column as drawn, by its own statics. */
function wrong(given: Given, choices: Readonly<Record<string, string>>): string | undefined {
  const of = (symbol: string): number => given[symbol] ?? NaN;
  const round = choices.section === 'round';
  const hollow = choices.core === 'shell' ? Math.max(of('b') - 2 * of('t_w'), 0) : 0;
  const [bar, whole] = [section(round, of('b'), hollow), section(round, of('b'), 0)];
  const EI = of('E') * of('q_E') * of('q_T') * bar.I;
  if (of('F') * gives(EI, of('L'), of('L')) > 1.01 * of('q_w') * of('w')) return 'sways';
  const mu = of('rho') * (bar.A + (choices.core === 'shell' ? of('q_i') * (whole.A - bar.A) : 0));
  if (swings(EI, mu, of('L')) < 0.99 * of('r_min') * of('f_m')) return 'shaken';
  const foot = of('b') + 2 * of('q_r') * of('r');
  const pull = (of('F') * of('L') * (foot / 2)) / section(round, foot, 0).I;
  const block = section(false, of('b_t'), 0);
  const held =
    choices.bed === 'tested' ? (of('F_t') * of('h_t') * (of('b_t') / 2)) / block.I : of('q_p') * of('sigma_a');
  return pull > 1.01 * held ? 'loose' : undefined;
}

const plain = (seen: Readonly<Record<string, Seen>>): Given =>
  Object.fromEntries(Object.entries(seen).flatMap(([symbol, one]) => (typeof one === 'number' ? [[symbol, one]] : [])));

/** The column drawn anew and pushed, swung and levered at its foot by other means than the sheet's formulas. */
const second: SecondModel = {
  carry: ({ given, choices, movements, effect }): Readonly<Record<string, number>> => {
    const drawn = plain(given);
    const [move] = movements;
    if (!move) return {};
    const [symbol, by] =
      move.part === 'rim'
        ? (['r', move.amount] as const)
        : move.direction === 'thicker'
          ? (['b', move.amount] as const)
          : (['L', -move.amount] as const);
    const now: Record<string, number> = { [symbol]: (drawn[symbol] ?? 0) + by };
    // A thick pad in place of a thin rim holds over all of its width.
    if (effect.q_r === 1) now.q_r = 1;
    const found = wrong({ ...drawn, ...now }, choices);
    if (found !== undefined) throw new Error(found);
    return now;
  },
};
export default second;
