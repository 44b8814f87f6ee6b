import { createMemo, createSignal, untrack, type Accessor } from 'solid-js';
import { levelOf, type Assumptions, type Level, type Pair } from '../../../signal/level-reversal';
import { offHalfTurn, type TwoWays } from '../../../signal/level-watch';

type Source = 'acceleration' | 'attitude';

/** A heading this far from half a turn is no slip of the hand: the phone was not turned, or the compass is led astray. */
const NOT_TURNED = 45;

/** Readings go first, second, second, first and so on, so that what drifts evenly cancels: whether one is with the phone turned. */
const isTurnedAt = (index: number): boolean => index % 4 === 1 || index % 4 === 2;

/** Every pair that one source of numbers has whole. */
function pairsBy(source: Source, readings: readonly TwoWays[]): readonly Pair[] | undefined {
  const pairs: Pair[] = [];
  for (let i = 0; i + 1 < readings.length; i += 2) {
    const [one, two] = [readings[i]?.[source], readings[i + 1]?.[source]];
    if (!one || !two) return undefined;
    pairs.push(isTurnedAt(i) ? { first: two, second: one, turnedFirst: true } : { first: one, second: two });
  }
  return pairs.length > 0 ? pairs : undefined;
}

/** The level by whichever source of numbers tells it with the smaller ±. */
function bestLevel(readings: readonly TwoWays[], assumed: Assumptions): Level | undefined {
  const levels = (['acceleration', 'attitude'] as const).flatMap((source) => {
    const pairs = pairsBy(source, readings);
    return pairs ? [levelOf(pairs, assumed)] : [];
  });
  return levels.sort((a, b) => a.halfWidth - b.halfWidth)[0];
}

/** The readings taken so far, and the level they come to. */
export function createReadings(assumed: Accessor<Assumptions>) {
  const [readings, setReadings] = createSignal<readonly TwoWays[]>([]);
  /** A reading whose heading does not fit, whether it should have been turned, and by how much it was, degrees. */
  const [doubtful, setDoubtful] = createSignal<{
    readonly reading: TwoWays;
    readonly turned: number;
    readonly wanted: boolean;
  }>();
  const level = createMemo(() => bestLevel(readings(), assumed()));

  const keep = (reading: TwoWays): void => {
    setDoubtful(undefined);
    setReadings((before) => [...before, reading]);
  };
  return {
    count: () => readings().length,
    /** Whole pairs. */
    pairs: () => Math.floor(readings().length / 2),
    /** How the phone lies for the next reading, and whether it is turned for it. */
    isTurned: () => isTurnedAt(readings().length),
    isTurning: () => readings().length % 2 === 1,
    doubtful,
    level,
    offer: (reading: TwoWays): void => {
      const before = untrack(readings);
      const last = before.at(-1);
      const wanted = before.length % 2 === 1;
      const short = last && offHalfTurn(last, reading);
      const off = short === undefined || wanted ? short : 180 - short;
      if (short !== undefined && off !== undefined && off > NOT_TURNED)
        setDoubtful({ reading, turned: Math.round(180 - short), wanted });
      else keep(reading);
    },
    keepDoubtful: (): void => {
      const one = doubtful();
      if (one) keep(one.reading);
    },
    dropDoubtful: (): void => {
      setDoubtful(undefined);
    },
    strikeLast: (): void => {
      setDoubtful(undefined);
      setReadings((before) => before.slice(0, -1));
    },
    clear: (): void => {
      setDoubtful(undefined);
      setReadings([]);
    },
  };
}
