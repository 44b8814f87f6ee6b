import { createSignal, onCleanup, type Accessor } from 'solid-js';
import { openMotion, type Motion, type MotionFault } from '../../../instrument/motion';
import type { Assumptions } from '../../../signal/level-reversal';
import { watchForReading, type Frame, type Watch } from '../../../signal/level-watch';
import { createReadings } from './readings';

/** Why there is no level, or no reading. */
type Problem = MotionFault | 'never still' | 'not lying';

/** A sensor that speaks is not kept waiting for rest longer than this, seconds. */
const PATIENCE = 40;

/** One use of the level: the sensor, the reading that is being taken, and the readings so far. */
export function createSlopeSession(assumed: Accessor<Assumptions>) {
  const [running, setRunning] = createSignal<'off' | 'starting' | 'on'>('off');
  const [problem, setProblem] = createSignal<Problem>();
  const [watch, setWatch] = createSignal<Watch>();
  const readings = createReadings(assumed);
  let motion: Motion | undefined;
  let taking: { readonly feed: ReturnType<typeof watchForReading>; since: number | undefined } | undefined;
  onCleanup(() => motion?.close());

  const stopTaking = (why?: Problem): void => {
    taking = undefined;
    setWatch(undefined);
    setProblem(why);
  };
  const onFrame = (frame: Frame): void => {
    setRunning('on');
    if (!taking) return;
    taking.since ??= frame.time;
    const now = taking.feed(frame);
    if (now.state === 'read') {
      stopTaking();
      // Told by touch, too: hands and eyes are elsewhere while it reads.
      if ('vibrate' in navigator) navigator.vibrate(80);
      readings.offer(now.reading);
    } else if (now.state === 'not lying') stopTaking('not lying');
    else if (frame.time - taking.since > PATIENCE) stopTaking('never still');
    else setWatch(now);
  };
  const onFault = (fault: MotionFault): void => {
    stopTaking(fault);
    setRunning('off');
  };

  return {
    running,
    problem,
    watch,
    readings,
    start: (): void => {
      setProblem(undefined);
      setRunning('starting');
      motion = openMotion(onFrame, onFault);
    },
    read: (): void => {
      setProblem(undefined);
      readings.dropDoubtful();
      taking = { feed: watchForReading(), since: undefined };
      setWatch({ state: 'moving' });
    },
    stop: () => stopTaking(),
  };
}

export type SlopeSession = ReturnType<typeof createSlopeSession>;
