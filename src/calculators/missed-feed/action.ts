import type { VerdictState } from '../../engine/calculator';
import { exact, telling, type Amount, type Contradiction, type Order, type Told } from '../../engine/order';
import { length } from '../../quantity/kinds';
import { advised, coins, hours, judged, mustHold, percent, type Ask, type Judged } from './judging';
import { settable } from '../../engine/settable';
import type words from './words/en';
import type { Missing, WayId } from './words/en/orders';

const { tell, step, contradict } = telling<typeof words>();

/** Steps of a knife's cut, m, and of a kitchen scale's word on a spool, kg. */
const BAND_STEP = 0.5e-3;
const PLASTIC_STEP = 5e-3;

const open = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** A length to a tenth of a millimetre. */
const tenths = (si: number): Amount => exact(Math.round(si * 1e4) / 1e4, length.mm);

/** Whole layers between which the last sound one lies. */
function between(ask: Ask): { low: number; high: number } {
  const sound = ask.number('n_g');
  const known = ask.known('n_g') ?? { low: sound, high: sound };
  // A whole number of layers, but for the dust of rounding.
  return { low: Math.max(Math.round(known.low - 0.4), 0), high: Math.max(Math.round(known.high + 0.4), 0) };
}

/** Where the last sound layer lies, as far as it is known. */
function place(ask: Ask): Told {
  const { low, high } = between(ask);
  const z = (n: number): Amount => tenths(ask.number('h_1') + (n - 1) * ask.number('h'));
  if (low >= high) return step('lastSound', { layer: low, at: z(low) });
  const least = Math.max(low, 1);
  return step('lastSoundBetween', { from: least, to: high, low: z(least), high: z(high) });
}

/** The input that says how much is sound. */
const SOUND = { gap: 'G', delay: 't_d', fed: 'm_f' } as const;

/** Readings that cannot all be right. */
export function contradiction(ask: Ask): Contradiction | undefined {
  const [lost, sound] = [ask.number('n_l'), ask.number('n_g')];
  const doubt = (ask.known('n_g')?.high ?? sound) - sound;
  const by = SOUND[ask.choice('by')];
  if (ask.number('n_t') < ask.number('n_s') - 0.5) {
    return contradict('stoppedAbove', { at: ask.quantity('Z_s'), whole: ask.quantity('H_t') }, ['Z_s', 'H_t']);
  }
  if (lost < -Math.max(doubt, 0.5)) return contradict('moreThanStopped', {}, ['m_f', 'm_t', 'k_u', 'Z_s']);
  if (sound < Math.min(0.5, -doubt)) return contradict('lostMoreThanAll', { by: ask.quantity(by) }, [by, 'Z_s']);
  return undefined;
}

const missingOf = (ask: Ask): Missing => ({
  layers: Math.round(Math.max(ask.number('n_l'), 0)),
  height: tenths(Math.max(ask.number('z_l'), 0)),
});

/** All that may be starved, to half a millimetre. */
const bandToCut = (ask: Ask): Amount =>
  tenths(settable(Math.max(ask.known('z_b')?.high ?? ask.number('z_b'), 0), BAND_STEP, 'up'));

const resumeSteps = (ask: Ask): Told[] => [
  place(ask),
  ask.choice('band') === 'left' ? step('soakBand') : step('cutBand', { height: bandToCut(ask) }),
  step('findCause'),
  step('measureFirst'),
];

const glueSteps = (ask: Ask): Told[] => [place(ask), step('sawFlat'), step('tryDry'), step('findCause')];

/** Plastic that is surely enough for a new one, to five grams. */
function plasticFor(ask: Ask): Amount {
  const takes = ask.quantity('m_a');
  return { ...takes, si: settable(ask.known('m_a')?.high ?? takes.si, PLASTIC_STEP, 'up'), width: 0 };
}

function anewSteps(ask: Ask, all: readonly Judged[]): Told[] {
  const price = (id: WayId) => coins(all.find((one) => one.id === id)?.cost ?? 0);
  const resume = ask.choice('stands') === 'off' ? undefined : price('resume');
  return [
    step('costs', { anew: price('anew'), glue: price('glue'), resume }),
    ...all.flatMap(({ against }) => (against.length > 0 ? [step('speaksAgainst', { against })] : [])),
    step('spent'),
    step('findCause'),
    step('weighSpool', { takes: plasticFor(ask) }),
  ];
}

/** Why the verdict is open, and what would close it. */
function doubts(ask: Ask): Told[] {
  const steps: Told[] = [];
  const stuck = ask.choice('stands') === 'stuck';
  const [joint, cost] = stuck ? (['s_r', 'C_r'] as const) : (['s_g', 'C_g'] as const);
  if (open(ask.check(joint))) {
    steps.push(step('strength', { holds: percent(ask.number(joint)), wanted: percent(ask.number('s_n')) }));
  }
  if (open(ask.check('z_b'))) steps.push(step('cutIntoBand'));
  if (open(ask.check(cost))) {
    steps.push(step('cost', { saved: coins(ask.number(cost)), anew: coins(ask.number('C_n')) }));
  }
  return steps;
}

function carryOut(ask: Ask, all: readonly Judged[]): Order {
  const best = advised(all);
  const missing = missingOf(ask);
  if (best === 'anew') return tell('anew', { missing }, { steps: anewSteps(ask, all) });
  const toEnd = hours(all.find((one) => one.id === best)?.time ?? 0);
  if (best === 'glue') return tell('glue', { missing, hours: toEnd }, { steps: glueSteps(ask) });
  return tell('resume', { missing, hours: toEnd }, { steps: resumeSteps(ask) });
}

/** What to do with the part, for every state of the checks. */
export function instruct(ask: Ask): Order {
  const all = judged(ask);
  if (mustHold(ask)) return tell('neverSeam', { missing: missingOf(ask) }, { steps: anewSteps(ask, all) });
  const plan = carryOut(ask, all);
  if (ask.verdict !== 'too close') return plan;
  return tell('tooClose', { missing: missingOf(ask), sure: advised(all) }, { steps: [...doubts(ask), ...plan.steps] });
}
