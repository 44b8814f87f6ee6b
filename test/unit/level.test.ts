import { describe, expect, it } from 'vitest';
import { average, batchMeans, fromAcceleration, fromAttitude, type Pose } from '../../src/signal/level';
import { levelOf, type Pair } from '../../src/signal/level-reversal';
import { offHalfTurn, watchForReading, type Frame, type TwoWays, type Watch } from '../../src/signal/level-watch';
import { seeded } from '../support/level-support';

const random = seeded(7);
const noisy = (value: number, sd: number, n = 300) => Array.from({ length: n }, () => value + random.normal(sd));
const g = (x: number, y: number, z: number, n = 300) =>
  Array.from({ length: n }, () => ({ x: x + random.normal(0.01), y: y + random.normal(0.01), z }));

describe('steps of the numbers passed on', () => {
  it('one number for the whole reading: half a step of 0.1, as the specification rounds', () => {
    expect(average(Array.from({ length: 100 }, () => 0.3)).steps).toBeCloseTo(0.05, 12);
  });
  it('two levels: half their distance, wherever the mean lies', () => {
    const values = Array.from({ length: 200 }, (_, i) => (i % 10 === 0 ? 0.3 : 0.2));
    expect(average(values).steps).toBeCloseTo(0.05, 12);
    expect(average(values, 1).steps).toBeCloseTo(0.1, 12);
  });
  it('noise wider than a step averages it away, fine numbers have none', () => {
    expect(average(noisy(0.234, 0.1, 400).map((v) => Math.round(v * 10) / 10)).steps).toBeLessThan(1e-3);
    expect(average(noisy(0.234, 0.01)).steps).toBeLessThan(1e-4);
  });
  it('refuses too few samples', () => {
    expect(() => batchMeans([1, 2, 3])).toThrow(RangeError);
  });
});

describe('sign and posture', () => {
  // W3C DeviceOrientation Event Specification, example: lying flat, screen up, z = 9.8; lifting one end brings its axis up.
  it('the earpiece’s end high is positive, by either sign convention', () => {
    const one = fromAcceleration(g(0, 0.5, 9.79));
    const other = fromAcceleration(g(0, -0.5, -9.79));
    expect(one?.along.sine).toBeCloseTo(0.5 / Math.hypot(0.5, 9.79), 3);
    expect(other?.along.sine).toBeCloseTo(0.5 / Math.hypot(0.5, 9.79), 3);
  });
  it('angles and acceleration agree', () => {
    const up = [0.04, -0.07, Math.sqrt(1 - 0.04 ** 2 - 0.07 ** 2)] as const;
    const beta = (Math.asin(up[1]) * 180) / Math.PI;
    const gamma = (Math.atan2(-up[0], up[2]) * 180) / Math.PI;
    const turn = fromAttitude(noisy(0, 0.001).map((d) => ({ alpha: 0, beta: beta + d, gamma: gamma - d })));
    expect(turn?.along.sine).toBeCloseTo(up[1], 5);
    expect(turn?.across.sine).toBeCloseTo(up[0], 5);
    const pull = fromAcceleration(g(9.81 * up[0], 9.81 * up[1], 9.81 * up[2]));
    expect(pull?.along.sine).toBeCloseTo(up[1], 3);
    expect(pull?.across.sine).toBeCloseTo(up[0], 3);
  });
  it('a phone on its edge or held upright gives none', () => {
    expect(fromAcceleration(g(9.81, 0, 0.1))).toBeUndefined();
    expect(fromAcceleration(g(0, 6, 7.7))).toBeUndefined();
    expect(fromAttitude(noisy(60, 0.01).map((beta) => ({ alpha: 0, beta, gamma: 0 })))).toBeUndefined();
    expect(fromAttitude(noisy(178, 0.01).map((beta) => ({ alpha: 0, beta, gamma: 0 })))).toBeUndefined();
  });
});

const tilt = (sine: number) => ({ sine, u: 1e-5, steps: 0 });
const reading = (along: number, across = 0): Pose => ({ along: tilt(along), across: tilt(across) });
const ASSUMED = { laying: 1e-3, direction: 0.05 };

describe('reversal', () => {
  it('the sensor’s own error cancels and is found: 12 and 8 are a tilt of 2 and an error of 10', () => {
    const level = levelOf([{ first: reading(0.012, 0.003), second: reading(0.008, 0.005) }], ASSUMED);
    expect(level.slope).toBeCloseTo(0.002, 8);
    expect(level.zero).toBeCloseTo(0.01, 12);
    expect(level.across).toBeCloseTo(-0.001, 8);
    expect(level.zeroAcross).toBeCloseTo(0.004, 12);
    expect(level.disagreement).toBeUndefined();
    // U = 2·(0.5 mm/m)/√2, half a drift of 0.5 mm/m that one pair does not cancel, and little else.
    expect(level.halfWidth).toBeCloseTo(Math.hypot(1e-3 / Math.SQRT2, 0.25e-3), 5);
  });
  it('a sensor that warms evenly drops out of pairs read A B B A, out of three as out of two', () => {
    // By hand: the sensor says zero + drift·k ± slope at reading k.
    const slope = 2e-3;
    const says = (k: number, turned: boolean) => reading(0.01 + 1e-3 * k + (turned ? -slope : slope), 0);
    const pairs: Pair[] = [
      { first: says(0, false), second: says(1, true) },
      { first: says(3, false), second: says(2, true), turnedFirst: true },
      { first: says(4, false), second: says(5, true) },
    ];
    expect(levelOf(pairs.slice(0, 2), ASSUMED).slope).toBeCloseTo(slope, 8);
    expect(levelOf(pairs, ASSUMED).slope).toBeCloseTo(slope, 8);
    expect(levelOf(pairs, ASSUMED).parts.drift).toBe(0);
    // One pair, or pairs all in one order, leave half the drift in.
    expect(levelOf(pairs.slice(0, 1), ASSUMED).slope).toBeCloseTo(slope - 0.5e-3, 8);
    expect(levelOf(pairs.slice(0, 1), ASSUMED).parts.drift).toBeGreaterThan(0);
  });
  it('a tilt across the bar makes the direction count', () => {
    const flat = levelOf([{ first: reading(0.002), second: reading(-0.002) }], ASSUMED);
    const leaning = levelOf([{ first: reading(0.002, 0.05), second: reading(-0.002, -0.05) }], ASSUMED);
    expect(leaning.halfWidth).toBeGreaterThan(3 * flat.halfWidth);
  });
  it('pairs that repeat well shrink the ±, pairs that do not widen it', () => {
    const pair = (error: number): Pair => ({ first: reading(0.012 + error), second: reading(0.008 - error) });
    // In turn so that a drift drops out, as the panel asks for them.
    const calm = levelOf(
      [0, 1e-5, -1e-5, 0, 1e-5].map((error, k) => ({ ...pair(error), turnedFirst: k % 2 === 1 })),
      ASSUMED,
    );
    const wild = levelOf([0, 3e-3, -3e-3].map(pair), ASSUMED);
    expect(calm.seen).toBe(true);
    expect(calm.halfWidth).toBeLessThan(1e-4);
    expect(wild.seen).toBe(false);
    expect(wild.halfWidth).toBeGreaterThan(3e-3);
  });
  it('a phone that rocks shows in the zero error of two pairs', () => {
    const pair = (zero: number): Pair => ({ first: reading(zero + 0.002), second: reading(zero - 0.002) });
    expect(levelOf([pair(0.01), pair(0.0105)], ASSUMED).disagreement).toBeLessThan(1);
    expect(levelOf([pair(0.01), pair(0.016)], ASSUMED).disagreement).toBeGreaterThan(1);
  });
});

describe('taking a reading by itself', () => {
  /** Feeds frames at 50 a second; returns the distinct states and the last answer. */
  function feed(at: (t: number) => Omit<Frame, 'time'>, seconds: number) {
    const watch = watchForReading();
    const states: string[] = [];
    let last: Watch = { state: 'moving' };
    for (let i = 0; i < seconds * 50; i += 1) {
      last = watch({ time: i / 50, ...at(i / 50) });
      if (states.at(-1) !== last.state) states.push(last.state);
      if (last.state === 'read') break;
    }
    return { states, last };
  }
  const rest = () => ({ acceleration: { x: random.normal(0.01), y: 0.2 + random.normal(0.01), z: 9.8 } });

  it('waits for rest, then reads', () => {
    const { states, last } = feed(
      (t) => (t < 1 ? { acceleration: { x: Math.sin(20 * t), y: 0, z: 9.8 } } : rest()),
      15,
    );
    expect(states).toEqual(['settling', 'moving', 'reading', 'read']);
    expect(last.state === 'read' && last.reading.acceleration?.along.sine).toBeCloseTo(0.2 / 9.802, 3);
  });
  it('a knock starts it again', () => {
    const { states } = feed((t) => (t > 4 && t < 4.1 ? { acceleration: { x: 1, y: 0, z: 9.8 } } : rest()), 20);
    expect(states).toEqual(['settling', 'reading', 'moving', 'reading', 'read']);
  });
  it('a phone that sags through the reading is not read', () => {
    const { states } = feed((t) => ({ acceleration: { ...rest().acceleration, y: 0.02 * t } }), 11);
    expect(states).not.toContain('read');
  });
  it('a page held up in the middle starts again, and too few frames are no reading', () => {
    const watch = watchForReading();
    const states = Array.from({ length: 900 }, (_, i) => {
      const time = i / 50 + (i > 200 ? 20 : 0);
      return watch({ time, ...rest() }).state;
    });
    // 1.5 s of rest and 8 s of reading, counted from the pause.
    expect(states.indexOf('read')).toBeGreaterThan(201 + 9.4 * 50);
    const slow = watchForReading();
    expect(Array.from({ length: 60 }, (_, i) => slow({ time: i / 3, ...rest() }).state)).not.toContain('read');
  });
  it('a phone that stands is told so', () => {
    expect(feed(() => ({ acceleration: { ...rest().acceleration, y: 9.8, z: 0 } }), 12).states).toContain('not lying');
  });
});

it('knows how far the turn was from half a turn', () => {
  const at = (heading?: number): TwoWays => ({ heading });
  expect(offHalfTurn(at(350), at(172))).toBeCloseTo(2, 9);
  expect(offHalfTurn(at(10), at(12))).toBeCloseTo(178, 9);
  expect(offHalfTurn(at(), at(12))).toBeUndefined();
});
