import type { AskOf } from '../../engine/calculator';
import { telling, type Contradiction, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step, contradict } = telling<typeof words>();

/** Below this share of the marked power a heater is not weak but broken. */
const OPEN_CIRCUIT = 0.05;
/** Above this share of the marked voltage the supply is another one than the heater was made for. */
const OTHER_SUPPLY = 1.3;

const twoDigits = (value: number): number => Number(value.toPrecision(2));

/** What was read, and where. */
const seen = (ask: Ask) =>
  ask.choice('by') === 'ohms'
    ? ({ by: 'ohms', value: ask.quantity('R_m') } as const)
    : ({ by: 'shown', value: ask.quantity('T_r') } as const);

const broken = (ask: Ask): Order =>
  tell('sensorOpen', seen(ask), { steps: [step('off'), step('wiggle'), step('ownLeads')] });

const shorted = (ask: Ask): Order =>
  tell('sensorShorted', seen(ask), { steps: [step('off'), step('lookForCrushed'), step('againstBlock')] });

/** What a wrong B makes of the working temperature. */
function hot(ask: Ask): Told {
  const due = { at: ask.quantity('T_w'), due: ask.quantity('R_w') };
  if (ask.choice('law') !== 'beta') return step('dueHot', due);
  const wrong = twoDigits(Math.abs(ask.known('dT_B')?.value ?? 0));
  return step('dueHotByB', { ...due, off: ask.quantity('delta_B'), wrong });
}

const other = (ask: Ask): Told => step(ask.choice('by') === 'ohms' ? 'compareScreen' : 'measureSensor');

const isPlatinum = (ask: Ask): boolean => ['pt100', 'pt1000'].includes(ask.choice('law'));

/** A circuit that is open or shorted has no temperature worth naming. */
function fault(ask: Ask): Order | undefined {
  // Asked first, so that a missing value is named.
  ask.number('T_a');
  if (ask.choice('by') === 'ohms') {
    const ohms = ask.number('R_m');
    if (ohms > ask.number('R_top')) return broken(ask);
    return ohms < ask.number('R_low') ? shorted(ask) : undefined;
  }
  const shown = ask.number('T_r');
  const end = shown < ask.number('T_low') ? 'cold' : shown > ask.number('T_top') ? 'hot' : undefined;
  if (end === undefined) return undefined;
  // Platinum has more ohms the hotter it is: an open one shows the hot end.
  return (end === 'hot') === isPlatinum(ask) ? broken(ask) : shorted(ask);
}

/** A screen that agrees with the room clears nothing before it was seen to follow a warm hand. */
function following(ask: Ask): Order | undefined {
  if (ask.choice('by') !== 'shown') return undefined;
  const by = ask.quantity('dT_h');
  const follows = ask.check('dT_h');
  if (follows === 'beyond') return tell('screenStands', { by }, { steps: [step('off'), step('measureSensor')] });
  if (follows === 'within') return undefined;
  return tell('warmMore', { by }, { steps: [step('handAgain')], measureAgain: true });
}

function sensorCheck(ask: Ask): Order {
  const found = fault(ask);
  if (found) return found;
  const state = ask.check('dT_s');
  const side = ask.number('dT_s') > 0 ? 'high' : 'low';
  const by = ask.quantity('dT_s');
  if (state === 'within') {
    const stands = following(ask);
    if (stands) return stands;
    const [tells, room] = [ask.quantity('T_s'), ask.quantity('T_a')];
    return tell('leaveSensor', { tells, room }, { steps: [hot(ask), step('wiggle'), other(ask)] });
  }
  if (state !== 'beyond') {
    return tell('sensorAgain', { side, by }, { steps: [step('sideBySide'), hot(ask)], measureAgain: true });
  }
  const block = side === 'high' ? 'colder' : 'hotter';
  const scaled = ask.known('dT_R')
    ? [step('blockIs', { block, by: ask.quantity('dT_R'), at: ask.quantity('T_w') })]
    : [];
  return tell(
    'doNotTrust',
    { side, by },
    {
      steps: [step('off'), step('typeFirst', { due: ask.quantity('R_e') }), ...scaled, other(ask), step('neverMakeUp')],
    },
  );
}

/** Too much power: of another voltage, or shorted. */
function tooStrong(ask: Ask): Told[] {
  const [marked, on] = [ask.quantity('V_r'), ask.quantity('V')];
  return [
    ask.number('V') > OTHER_SUPPLY * ask.number('V_r')
      ? step('squareOfVoltage', { marked, on })
      : step('shortedWinding'),
    step('rightKind', { has: ask.quantity('R_x'), on: marked }),
    step('wouldDraw', { current: ask.quantity('I') }),
  ];
}

function heaterCheck(ask: Ask): Order {
  const ratio = ask.number('k_P');
  const times = twoDigits(ratio);
  const facts = { has: ask.quantity('R_h'), on: ask.quantity('V'), gives: ask.quantity('P') };
  if (ask.verdict === 'within') {
    return tell('leaveHeater', facts, { steps: [step('draws', { current: ask.quantity('I') }), step('wiresToBlock')] });
  }
  if (ask.verdict !== 'beyond') {
    return tell('heaterAgain', { ...facts, times }, { steps: [step('takeOffTips')], measureAgain: true });
  }
  if (ratio > ask.number('k_hi')) return tell('takeOut', { ...facts, times }, { steps: tooStrong(ask) });
  const steps = [step('off'), step('shouldHave', { has: ask.quantity('R_x') }), step('terminalsFirst')];
  return ratio < OPEN_CIRCUIT
    ? tell('heaterOpen', { has: facts.has }, { steps })
    : tell('heaterWeak', { ...facts, times }, { steps });
}

/** Lines of a table that does not fall, or bounds that leave nothing between them. */
export function contradiction(ask: Ask): Contradiction | undefined {
  if (ask.choice('what') === 'heater') return undefined;
  if (ask.choice('law') === 'three') {
    const [first, second, third] = [ask.number('R_1'), ask.number('R_2'), ask.number('R_3')];
    if (first <= second || second <= third) {
      return contradict('tableRises', { ohms: [ask.quantity('R_1'), ask.quantity('R_2'), ask.quantity('R_3')] }, [
        'R_1',
        'R_2',
        'R_3',
      ]);
    }
  }
  const [low, high] = ask.choice('by') === 'ohms' ? (['R_lo', 'R_hi'] as const) : (['T_lo', 'T_hi'] as const);
  if (ask.number(low) < ask.number(high)) return undefined;
  return contradict('boundsCross', { low: ask.quantity(low), high: ask.quantity(high) }, [low, high]);
}

/** What the hand does, for every state of the checks. */
export function instruct(ask: Ask): Order {
  return ask.choice('what') === 'heater' ? heaterCheck(ask) : sensorCheck(ask);
}
