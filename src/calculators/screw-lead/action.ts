import { length } from '../../quantity/kinds';
import type { AskOf } from '../../engine/calculator';
import { exact, telling, type Amount, type Contradiction, type Order } from '../../engine/order';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import { nearestMade } from './leads';
import type words from './words/en';

export type Ask = AskOf<{ inputs: typeof inputs; formulas: typeof formulas }>;
const { tell, step, contradict } = telling<typeof words>();

/** Of the made leads so many are looked at: no reading is so poor that more of them matter. */
const LOOKED_AT = 5;
/** A designation and a lead farther apart than this share are two screws. */
const SAME = 1e-3;

/** As it stands in a table: all its digits count. */
function nominal(si: number): Amount {
  return exact(si, length.mm);
}

/** The lead that this screw is likely made with. */
export function likely(ask: Ask): number {
  return nearestMade(ask.number('P_m'), 1)[0] ?? ask.number('P_h');
}

/** What the screw has instead, if the reading tells it from its neighbours. */
function setIt(ask: Ask): Order {
  const found = nearestMade(ask.number('P_m'), LOOKED_AT)
    .map((lead) => ({ lead, state: ask.after({ P_h: lead }) }))
    .filter(({ state }) => state !== 'beyond');
  const [near, other] = found;
  const measured = ask.quantity('P_m');
  if (!near) return tell('noneMade', { measured }, { steps: [step('countTurns'), step('slips')], measureAgain: true });
  if (other || near.state !== 'within') {
    const args = { near: nominal(near.lead), other: other && nominal(other.lead) };
    return tell('tellApart', args, { steps: [step('moreTurns'), step('sameSide')], measureAgain: true });
  }
  const longer = near.lead > ask.number('P_h');
  return tell(
    'setMade',
    { lead: nominal(near.lead), measured, longer },
    {
      steps: [step('countStarts'), step('stepsToo'), step('keep')],
      movements: [
        {
          part: 'set lead',
          direction: longer ? 'raise' : 'lower',
          amount: Math.abs(near.lead - ask.number('P_h')),
        },
      ],
      effect: { P_h: near.lead },
    },
  );
}

/** What is written on the screw is not what the machine counts with. */
export function contradiction(ask: Ask): Contradiction | undefined {
  if (!ask.known('P_d')) return undefined;
  const [marked, set] = [ask.number('P_d'), ask.number('P_h')];
  if (Math.abs(marked / set - 1) <= SAME) return undefined;
  return contradict('twoLeads', { marked: nominal(marked), set: ask.quantity('P_h') }, ['P', 'n_s', 'P_h']);
}

/** Leave it, measure again over more turns, or set what the screw has. */
export function action(ask: Ask): Order {
  if (ask.verdict === 'within') return tell('leave', { lead: ask.quantity('P_h') }, { steps: [step('keep')] });
  if (ask.verdict === 'too close') {
    return tell('again', {}, { steps: [step('moreTurns'), step('sameSide')], measureAgain: true });
  }
  // Asked for first, so that the screen says what is still needed.
  ask.number('dP');
  return setIt(ask);
}
