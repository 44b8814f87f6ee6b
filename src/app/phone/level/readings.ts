import { createMemo, createSignal, untrack, type Accessor } from 'solid-js';
import { levelOf, type Assumptions, type Level, type Pair } from '../../../signal/level-reversal';
import { offHalfTurn, type TwoWays } from '../../../signal/level-watch';

type Source = 'acceleration' | 'attitude';

/** A heading this far from half a turn is no slip of the hand: the phone was not turned, or the compass is led astray. */
const NOT_TURNED = 45;

/** Every pair that one source of numbers has whole: first, second, first, second. */
function pairsBy(source: Source, readings: readonly TwoWays[]): readonly Pair[] | undefined {
  const pairs: Pair[] = [];
  for (let i = 0; i + 1 < readings.length; i += 2) {
    const [first, second] = [readings[i]?.[source], readings[i + 1]?.[source]];
    if (!first || !second) return undefined;
    pairs.push({ first, second });
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
  /** A reading whose heading does not fit a half turn, and by how much it was turned, degrees. */
  const [doubtful, setDoubtful] = createSignal<{ readonly reading: TwoWays; readonly turned: number }>();
  const level = createMemo(() => bestLevel(readings(), assumed()));

  const keep = (reading: TwoWays): void => {
    setDoubtful(undefined);
    setReadings((before) => [...before, reading]);
  };
  return {
    count: () => readings().length,
    /** Whole pairs. */
    pairs: () => Math.floor(readings().length / 2),
    doubtful,
    level,
    offer: (reading: TwoWays): void => {
      const last = untrack(readings).at(-1);
      const off = last && offHalfTurn(last, reading);
      if (off !== undefined && off > NOT_TURNED) setDoubtful({ reading, turned: Math.round(180 - off) });
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
