import type { OutsideProof } from '../../engine/outside';

/** A nut on a screw, N and m: what a bench would show of it. */
interface Bench {
  readonly load: number;
  readonly lead: number;
  readonly radius: number;
  /** Coulomb friction of the flanks, their half angle, and friction of the collar at its radius. */
  readonly mu: number;
  readonly alpha: number;
  readonly collar: number;
}

/** Zero of a falling function. */
function zero(f: (x: number) => number, most: number): number {
  let [low, high] = [0, most];
  for (let i = 0; i < 200; i += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** One turn laid flat: forces on the nut as it begins to slide down, the push on the flanks found by halving. */
function sliding({ load, lead, radius, mu, alpha, collar }: Bench): {
  readonly drives: number;
  readonly brakes: number;
} {
  const turn = 2 * Math.PI * radius;
  const along = Math.hypot(turn, lead);
  const [up, round] = [turn / along, lead / along];
  const rub = mu / Math.cos(alpha);
  const push = zero((N) => load - N * up - rub * N * round, 10 * load);
  return { drives: push * round * radius, brakes: rub * push * up * radius + collar * load };
}

/** The torque that makes the margin as wanted, found by halving: brakes over what drives. */
const heldBy = (bench: Bench, margin: number): number => {
  const { drives, brakes } = sliding(bench);
  return zero((torque) => margin * drives - brakes - torque, 100 * drives);
};

/** Force at which that screw begins to creep, pulled ever harder. */
function pullThatCreeps(bench: Bench, margin: number): number {
  const torque = heldBy(bench, margin);
  return zero((pull) => {
    const { drives, brakes } = sliding({ ...bench, load: bench.load + pull });
    return brakes + torque - drives;
  }, 1000 * bench.load);
}

/** Torque that turns it down. */
function turnThatCreeps(bench: Bench, margin: number): number {
  const torque = heldBy(bench, margin);
  const { drives, brakes } = sliding(bench);
  return zero((turned) => brakes + torque - drives - turned, 100 * drives);
}

const G = 9.80665;
const SOURCE =
  'Forces on a nut that slides down one turn laid flat, Coulomb friction on flanks and collar, every unknown found by halving: a screw held with just the margin wanted, ';
const steep: Bench = { load: 2 * G, lead: 8e-3, radius: 3.5e-3, mu: 0.15, alpha: Math.PI / 12, collar: 0.1 * 5e-3 };
const given = {
  M_z: '2 kg ± 0',
  mu: '0.15 ± 0',
  mu_c: '0.1 ± 0',
  d_c: '10 mm ± 0',
  d: '8 mm ± 0',
  P: '2 mm',
  P_h: '8 mm',
  alpha: '15 deg',
} as const;

/** The trials, by pull and by turning. */
export const trialChecks: readonly OutsideProof[] = [
  ...['1.5', '2', '3'].map((margin): OutsideProof => ({
    source: `${SOURCE}${margin}, pulled or turned until it creeps`,
    given: { ...given, m_lim: margin },
    choices: { screw: 'own', screws: 'one' },
    expect: {
      F_p: [() => pullThatCreeps(steep, Number(margin)), 1e-6],
      T_t: [() => turnThatCreeps(steep, Number(margin)) * 1e3, 1e-6],
    },
  })),
  {
    source: `${SOURCE}two on one belt, pulled midway, and turned both by one`,
    given: { ...given, M_z: '4 kg ± 0' },
    choices: { screw: 'own', drive: 'belt' },
    expect: {
      F_p: [() => 2 * pullThatCreeps(steep, 1.5), 1e-6],
      T_t: [() => 2 * turnThatCreeps(steep, 1.5) * 1e3, 1e-6],
    },
  },
  {
    source: `${SOURCE}the nearer one of two with a motor each, 1.125 kg`,
    given: { ...given, M_z: '1.5 kg ± 0', M: '0.5 kg ± 0', S: '400 mm ± 0', x: '100 mm ± 0' },
    choices: { screw: 'own' },
    // Half the mass and three quarters of the carriage: 0.75 + 0.125 kg.
    expect: {
      F_p: [() => pullThatCreeps({ ...steep, load: 0.875 * G }, 1.5), 1e-6],
      T_t: [() => turnThatCreeps({ ...steep, load: 0.875 * G }, 1.5) * 1e3, 1e-6],
    },
  },
];
