import { average, fromAcceleration, fromAttitude, HELD, type Acceleration, type Attitude, type Pose } from './level';

/** What the sensors say at one moment: the newest numbers of each that has spoken at all. */
export interface Frame {
  /** Seconds, of any clock that runs evenly. */
  readonly time: number;
  readonly acceleration?: Acceleration | undefined;
  readonly attitude?: Attitude | undefined;
}

/** A reading by each source; `heading` in degrees, where it is known. */
export interface TwoWays {
  readonly acceleration?: Pose | undefined;
  readonly attitude?: Pose | undefined;
  readonly heading?: number | undefined;
}

export type Watch =
  | { readonly state: 'moving' | 'not lying' }
  | { readonly state: 'settling' | 'reading'; readonly done: number }
  | { readonly state: 'read'; readonly reading: TwoWays };

/** At rest for this long before the reading starts, and reading for this long, seconds. */
const SETTLE = 1.5;
export const READ = 8;
/** A pause of the page longer than this, seconds, or fewer frames than this in a reading: it starts again. */
const PAUSE = 0.5;
const LEAST_FRAMES = 100;
/** Numbers that stray farther than this within a settling time are no noise: m/s², degrees. */
const SHAKEN = { acceleration: 0.25, attitude: 1.5 };
/** First and last third of a reading may differ by this much, besides noise and one step: m/s², degrees. */
const CREPT = { acceleration: 0.02, attitude: 0.12 };

const spanOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

function have<T>(values: readonly (T | undefined)[]): readonly T[] | undefined {
  const found = values.filter((value) => value !== undefined);
  return found.length > 0 && found.length === values.length ? found : undefined;
}

const axesOf = (frames: readonly Frame[]) => {
  const acceleration = have(frames.map((frame) => frame.acceleration));
  const attitude = have(frames.map((frame) => frame.attitude));
  return {
    acceleration: acceleration && [acceleration.map(({ x }) => x), acceleration.map(({ y }) => y)],
    attitude: attitude && [attitude.map(({ beta }) => beta), attitude.map(({ gamma }) => gamma)],
  };
};

/** Numbers of both sources stay put within what noise explains. */
function isStill(frames: readonly Frame[]): boolean {
  const axes = axesOf(frames);
  const calm = (source: 'acceleration' | 'attitude') =>
    (axes[source] ?? []).every((values) => spanOf(values) <= SHAKEN[source]);
  return (axes.acceleration ?? axes.attitude) !== undefined && calm('acceleration') && calm('attitude');
}

/** The last third stands where the first did: nothing sags, and no filter still creeps. */
function isSettled(frames: readonly Frame[]): boolean {
  const axes = axesOf(frames);
  return (['acceleration', 'attitude'] as const).every((source) =>
    (axes[source] ?? []).every((values) => {
      const third = Math.floor(values.length / 3);
      const [head, tail] = [average(values.slice(0, third), HELD), average(values.slice(-third), HELD)];
      const allowed = CREPT[source] + 4 * Math.hypot(head.u, tail.u) + head.steps + tail.steps;
      return Math.abs(head.mean - tail.mean) <= allowed;
    }),
  );
}

/** Mean direction of angles in degrees, 0 to 360; undefined where one is no number. */
function headingOf(angles: readonly number[]): number | undefined {
  if (!angles.every(Number.isFinite)) return undefined;
  const rad = Math.PI / 180;
  const sum = (f: (x: number) => number) => angles.reduce((total, angle) => total + f(angle * rad), 0);
  return (Math.atan2(sum(Math.sin), sum(Math.cos)) / rad + 360) % 360;
}

function readingFrom(frames: readonly Frame[]): TwoWays {
  const acceleration = have(frames.map((frame) => frame.acceleration));
  const attitude = have(frames.map((frame) => frame.attitude));
  return {
    acceleration: acceleration && fromAcceleration(acceleration),
    attitude: attitude && fromAttitude(attitude),
    heading: attitude && headingOf(attitude.map(({ alpha }) => alpha)),
  };
}

/**
 * Takes one reading by itself: waits until the phone has been at rest for a while, then gathers; a knock starts it again.
 * Feed it frames at an even rate of at least 20 a second until it says `read`.
 */
export function watchForReading(): (frame: Frame) => Watch {
  let kept: Frame[] = [];
  let calm = false;
  return (frame) => {
    const first = kept[0];
    // A source that starts or stops to speak would leave gaps.
    const changed =
      first &&
      ((first.acceleration === undefined) !== (frame.acceleration === undefined) ||
        (first.attitude === undefined) !== (frame.attitude === undefined));
    const last = kept.at(-1);
    const paused = last && frame.time - last.time > PAUSE;
    if (changed || paused) [kept, calm] = [[], false];
    kept.push(frame);
    const since = frame.time - SETTLE;
    const lately = kept.filter(({ time }) => time >= since);
    if (!isStill(lately)) {
      [kept, calm] = [lately, false];
      return { state: 'moving' };
    }
    const start = kept[0]?.time ?? frame.time;
    if (!calm) {
      if (frame.time - start < SETTLE) return { state: 'settling', done: (frame.time - start) / SETTLE };
      [kept, calm] = [[frame], true];
      return { state: 'reading', done: 0 };
    }
    const done = (frame.time - start) / READ;
    if (done < 1) return { state: 'reading', done };
    const frames = kept;
    [kept, calm] = [[], false];
    if (frames.length < LEAST_FRAMES || !isSettled(frames)) return { state: 'moving' };
    const reading = readingFrom(frames);
    return reading.acceleration || reading.attitude ? { state: 'read', reading } : { state: 'not lying' };
  };
}

/** How far the second reading's heading is from half a turn, degrees; undefined where the heading is not known. */
export function offHalfTurn(first: TwoWays, second: TwoWays): number | undefined {
  if (first.heading === undefined || second.heading === undefined) return undefined;
  const turned = (((second.heading - first.heading) % 360) + 360) % 360;
  return Math.abs(turned - 180);
}
