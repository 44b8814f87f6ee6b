import { createMemo, createSignal, onCleanup, untrack, type Accessor } from 'solid-js';
import { openMotion, type Motion, type MotionFault } from '../../../instrument/motion';
import { levelOf, type Assumptions, type Level, type Pair } from '../../../signal/level-reversal';
import { offHalfTurn, watchForReading, type Frame, type TwoWays, type Watch } from '../../../signal/level-watch';
import { faultWords, NEVER_STILL, NOT_LYING } from './slope-words';

type Source = 'acceleration' | 'attitude';

/** A sensor that speaks is not kept waiting for rest longer than this, seconds. */
const PATIENCE = 40;
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

/** One use of the level: the sensor, the reading that is being taken, and the readings so far. */
export function createSlopeSession(assumed: Accessor<Assumptions>) {
  const [running, setRunning] = createSignal<'off' | 'starting' | 'on'>('off');
  const [problem, setProblem] = createSignal<string>();
  const [watch, setWatch] = createSignal<Watch>();
  const [readings, setReadings] = createSignal<readonly TwoWays[]>([]);
  /** A reading whose heading does not fit a half turn, and by how much it was off. */
  const [doubtful, setDoubtful] = createSignal<{ readonly reading: TwoWays; readonly turned: number }>();
  let motion: Motion | undefined;
  let taking: { readonly feed: ReturnType<typeof watchForReading>; since: number | undefined } | undefined;

  const stopTaking = (why?: string): void => {
    taking = undefined;
    setWatch(undefined);
    setProblem(why);
  };
  const keep = (reading: TwoWays): void => {
    setDoubtful(undefined);
    setReadings((before) => [...before, reading]);
  };
  const offer = (reading: TwoWays): void => {
    stopTaking();
    // Told by touch, too: hands and eyes are elsewhere while it reads.
    if ('vibrate' in navigator) navigator.vibrate(80);
    const last = untrack(readings).at(-1);
    const off = last && offHalfTurn(last, reading);
    if (off !== undefined && off > NOT_TURNED) setDoubtful({ reading, turned: Math.round(180 - off) });
    else keep(reading);
  };

  const onFrame = (frame: Frame): void => {
    setRunning('on');
    if (!taking) return;
    taking.since ??= frame.time;
    const now = taking.feed(frame);
    if (now.state === 'read') offer(now.reading);
    else if (now.state === 'not lying') stopTaking(NOT_LYING);
    else if (frame.time - taking.since > PATIENCE) stopTaking(NEVER_STILL);
    else setWatch(now);
  };
  const onFault = (fault: MotionFault): void => {
    stopTaking(faultWords[fault]);
    setRunning('off');
  };
  const start = (): void => {
    setProblem(undefined);
    setRunning('starting');
    motion = openMotion(onFrame, onFault);
  };
  const level = createMemo(() => bestLevel(readings(), assumed()));
  onCleanup(() => motion?.close());

  return {
    running,
    problem,
    watch,
    readings,
    doubtful,
    level,
    start,
    read: (): void => {
      setProblem(undefined);
      setDoubtful(undefined);
      taking = { feed: watchForReading(), since: undefined };
      setWatch({ state: 'moving' });
    },
    stop: () => stopTaking(),
    keepDoubtful: (): void => {
      const one = doubtful();
      if (one) keep(one.reading);
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
