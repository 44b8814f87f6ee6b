import { expanded } from '../../formula/outcome';
import { length } from '../../quantity/kinds';
import { exact, telling, type Effect, type Order, type Told } from '../../engine/order';
import type { Ask } from './asked';
import { changeTo } from './change';
import { ofPrint } from './of-print';
import { suspicion } from './suspect';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

/** Longest length worth proposing, m. */
const LONGEST = 3;

/** By counting alone. */
function byParts(ask: Ask): Order {
  const axis = ask.choice('axis');
  const then = axis === 'feed' ? step('measureFeed') : step('measureLongest');
  const state = ask.check('q');
  if (state === 'within') return tell('leaveCounted', { axis, set: ask.quantity('S_0') }, { steps: [then] });
  if (state === 'beyond') {
    const { change, ...rest } = changeTo(ask, 'S_c');
    const clue = suspicion(ask, 1 + ask.number('q'), 0, 'set');
    return tell('setCounted', { change }, { steps: [step('countAgain'), ...clue, then], ...rest });
  }
  return tell('measureTravel', { axis, set: ask.quantity('S_0') }, { steps: [then], measureAgain: true });
}

/** How long the test would have to be, or that no length will do. SI. */
function longer(ask: Ask, commanded: number): Told {
  const error = ask.known('c');
  if (!error) return step('overLonger');
  const doubt = expanded(error) * commanded;
  const margin = Math.abs(Math.abs(error.value) - ask.number('e_lim'));
  // A tenth more, so that the doubt does fit in.
  const needed = margin > 0 ? Math.ceil((1.1 * doubt) / margin / 0.01) * 0.01 : Infinity;
  if (needed > LONGEST) return step('noLengthSettles');
  return step('thisLong', {
    length: exact(Number(needed.toFixed(3)), length.mm),
    slack: error.budget[0]?.symbol === 'b',
  });
}

/** The drive’s own travel against what it was told. */
function byTravel(ask: Ask): Order {
  const axis = ask.choice('axis');
  if (ask.number('l_d') <= 0) return tell('placesSwapped', {}, { steps: [step('swapped')], measureAgain: true });
  const state = ask.check('c');
  const setIsCounted = ask.check('q') === 'within';
  const asked = step('travelAsks', { travel: ask.quantity('S_n'), parts: ask.quantity('S_c') });
  if (state === 'too close' || state === 'none') {
    return tell('measureLonger', { axis }, { steps: [longer(ask, ask.number('l_c')), asked], measureAgain: true });
  }
  if (state === 'within' && setIsCounted) return tell('leaveBoth', { axis }, { steps: [step('scaleThePiece')] });
  if (state === 'within') {
    return tell(
      'correctEntries',
      { axis },
      {
        steps: [
          step('setAndParts', { set: ask.quantity('S_0'), parts: ask.quantity('S_c') }),
          ...suspicion(ask, 1 + ask.number('q'), 0, 'entered'),
        ],
      },
    );
  }
  return wrongTravel(ask, asked);
}

/** It surely moves otherwise than told. */
function wrongTravel(ask: Ask, asked: Told): Order {
  const axis = ask.choice('axis');
  const off = { axis, by: ask.quantity('c'), far: ask.number('c') > 0 };
  const settles = ({ effect }: { readonly effect: Effect }): boolean => ask.after(effect) === 'within';
  const counted = changeTo(ask, 'S_c');
  if (counted.change.to.si !== ask.number('S_0') && settles(counted)) {
    const { change, ...rest } = counted;
    return tell('set', { ...off, change }, { steps: [step('takeCounted'), asked], ...rest });
  }
  const measured = changeTo(ask, 'S_n');
  if (settles(measured)) {
    const { change, ...rest } = measured;
    const countsAs =
      axis === 'z'
        ? step('screwCountsAs', { lead: ask.quantity('P_e') })
        : step('beltCountsAs', { pitch: ask.quantity('p_e') });
    return tell('set', { ...off, change }, { steps: [countsAs, step('repeatElsewhere'), asked], ...rest });
  }
  const found = ask.known('q_n');
  const doubt = found ? expanded(found) : 0;
  // What no stretch of a belt and no screw of its class explains is no matter of steps: a number would paper over a wrong part.
  const most = ask.known('q_m')?.high ?? ask.number('q_m');
  if (Math.abs(ask.number('q_n')) > most + doubt) {
    const clue = suspicion(ask, 1 / (1 + ask.number('q_n')), doubt, 'moved');
    const stretch =
      axis === 'x' || axis === 'y' ? [step('couldStretch', { most: ask.quantity('q_m'), far: off.far })] : [];
    return tell('findPart', off, { steps: [asked, ...stretch, ...clue, step('slips'), step('notThePiece')] });
  }
  return tell('measureLonger', { axis }, { steps: [longer(ask, ask.number('l_c')), asked], measureAgain: true });
}

/** What slip at print speed says, where it was measured. */
function slipping(ask: Ask): Told {
  const slip = ask.known('s_f');
  if (!slip) return step('feedAtFlow');
  return slip.low > ask.number('e_lim') ? step('slip', { share: ask.quantity('s_f') }) : step('noSlip');
}

/** What ticks say, where some were surely heard: it did not feed what it was told, whatever the number. */
const tickedIn = (ask: Ask): Told[] =>
  (ask.known('l_k')?.low ?? 0) > 0 ? [step('ticked', { lost: ask.quantity('l_k') })] : [];

/** Filament fed against commanded. */
function byFeed(ask: Ask): Order {
  if (ask.number('l_d') <= 0) return tell('marksSwapped', {}, { steps: [step('swapped')], measureAgain: true });
  const state = ask.check('c');
  const slip = slipping(ask);
  const ticked = tickedIn(ask);
  if (state === 'within') return tell('leaveFeed', {}, { steps: [...ticked, slip] });
  if (state === 'beyond' && ask.number('c') < 0 && ticked.length > 0) {
    return tell('feedTicks', { by: ask.quantity('c') }, { steps: [...ticked, step('findTicks')], measureAgain: true });
  }
  if (state === 'beyond') {
    const { change, ...rest } = changeTo(ask, 'S_n');
    const farOff = Math.abs(ask.number('c')) > 0.2;
    return tell(
      'setFeed',
      { by: ask.quantity('c'), little: ask.number('c') < 0, change },
      {
        steps: [
          step('gearCountsAs', { diameter: ask.quantity('d_e') }),
          farOff ? step('farOff') : step('brushTeeth'),
          ...ticked,
          slip,
        ],
        ...rest,
      },
    );
  }
  return tell('feedLonger', {}, { steps: [longer(ask, ask.number('l_f')), ...ticked, slip], measureAgain: true });
}

/** What to set, or what to leave alone, for every way of going about it. */
export function instruct(ask: Ask): Order {
  const isFeed = ask.choice('axis') === 'feed';
  const by = isFeed ? ask.choice('fed') : ask.choice('by');
  // Asked first, so that a missing value is named.
  ask.need('S_0');
  if (by === 'parts') return byParts(ask);
  if (by === 'print') return ofPrint(ask);
  ask.need('c');
  return isFeed ? byFeed(ask) : byTravel(ask);
}
