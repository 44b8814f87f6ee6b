import { describe, expect, test } from 'vitest';
import { estimateNote } from '../../src/signal/note';
import { gaussian, pluck, random, RATE, type Room } from '../support/plucks';
import { times } from '../support/sweep';

const room = (noise: Room['noise'], microphone: Room['microphone'], snrDb: number, low = 35, high = 180): Room => ({
  noise,
  microphone,
  snrDb,
  low,
  high,
});

describe('what is no note is refused', () => {
  const normal = gaussian(random(11));
  const noise = (length: number, level: number) => Float32Array.from({ length }, () => level * normal());
  const tones = (length: number, from: number, parts: readonly (readonly [number, number])[]) =>
    Float32Array.from({ length }, (_, i) =>
      parts.reduce((sum, [f, a]) => sum + a * Math.sin((2 * Math.PI * f * (i + from)) / RATE), 1e-4 * normal()),
    );
  const hum = [50, 100, 150, 200, 250].map((f, i) => [f, 0.1 / (i + 1)] as const);

  test('noise alone', () => {
    for (let i = 0; i < times(20, 3); i += 1) {
      const sound = noise(RATE, 0.05);
      expect(estimateNote(sound, RATE, { before: noise(RATE / 2, 0.05) })).toMatchObject({ reason: 'too noisy' });
      expect(estimateNote(sound, RATE)).toMatchObject({ reason: 'too noisy' });
    }
  });

  test('hum alone, heard before or not', () => {
    const sound = tones(RATE, RATE / 2, hum);
    expect(estimateNote(sound, RATE, { before: tones(RATE / 2, 0, hum) })).toMatchObject({ reason: 'too noisy' });
    expect(estimateNote(sound, RATE)).toMatchObject({ reason: 'too noisy' });
  });

  test('a fan alone that was not heard before', () => {
    expect(estimateNote(tones(RATE, 0, [[87, 0.1], [174, 0.05]]), RATE)).toMatchObject({ reason: 'too noisy' }); // prettier-ignore
  });

  test('silence and what is next to it', () => {
    expect(estimateNote(new Float32Array(RATE), RATE)).toMatchObject({ reason: 'too quiet' });
    expect(estimateNote(noise(RATE, 3e-6), RATE)).toMatchObject({ reason: 'too quiet' });
  });

  test('too short a piece', () => {
    const { samples, before } = pluck(room('white', 'plain', 20), 3);
    expect(estimateNote(samples.slice(0, 4000), RATE, { before })).toMatchObject({ reason: 'too short' });
  });

  // A belt's partials lose a few nepers a second (common practice, no source): neither a held tone's few tenths nor a knock's dozens.
  test.each([
    [0.5, 'held'],
    [4, undefined],
    [35, 'muffled'],
  ])('a tone that loses %d nepers a second', (fall, reason) => {
    const sound = Float32Array.from({ length: RATE }, (_, i) => {
      const parts = [1, 2, 3, 4].reduce((sum, n) => sum + Math.cos((2 * Math.PI * 87.3 * n * i) / RATE + n) / n, 0);
      return 0.2 * Math.exp((-fall * i) / RATE) * parts + 1e-4 * normal();
    });
    const note = estimateNote(sound, RATE, { before: noise(RATE / 2, 1e-4) });
    expect(note.status === 'refused' ? note.reason : undefined).toBe(reason);
  });

  test('a note beyond the range', () => {
    const above = pluck(room('white', 'plain', 20, 600, 700), 4);
    expect(estimateNote(above.samples, RATE, { before: above.before })).toMatchObject({ reason: 'out of range' });
    const made = pluck(room('white', 'plain', 20, 100, 120), 4);
    expect(estimateNote(made.samples, RATE, { before: made.before, low: 200 })).toMatchObject({
      reason: 'out of range',
    });
  });
});

describe('an overdriven microphone', () => {
  const clip = (samples: Float32Array, gain: number) => samples.map((x) => Math.max(-1, Math.min(1, gain * x)));

  test('harms nothing where it lasts a moment', () => {
    for (let seed = 20; seed < 20 + times(10, 2); seed += 1) {
      const { samples, before, frequency } = pluck(room('white', 'plain', 20), seed);
      const note = estimateNote(clip(samples, 4), RATE, { before: before.map((x) => 4 * x) });
      expect(note.status).toBe('found');
      if (note.status === 'found') expect(Math.abs(1200 * Math.log2(note.frequency / frequency))).toBeLessThan(2);
    }
  });

  test('is refused where nothing whole is left', () => {
    const { samples, before } = pluck(room('white', 'plain', 20), 31);
    expect(estimateNote(clip(samples, 2000), RATE, { before })).toMatchObject({ reason: 'overdriven' });
  });
});

test.each([16000, 44100, 96000])('at %i samples a second the same note is found', (rate) => {
  const [f0, b] = [82.4, 3e-4];
  const normal = gaussian(random(8));
  const samples = Float32Array.from({ length: rate }, (_, i) => {
    let sum = 1e-4 * normal();
    for (let n = 1; n <= 8; n += 1) {
      const f = n * f0 * Math.sqrt(1 + b * n * n);
      sum += (0.1 / n) * Math.exp((-(3 + n) * i) / rate) * Math.cos((2 * Math.PI * f * i) / rate + n);
    }
    return sum;
  });
  const note = estimateNote(samples, rate);
  expect(note.status).toBe('found');
  if (note.status !== 'found') return;
  expect(note.frequency).toBeCloseTo(f0 * Math.sqrt(1 + b), 1);
  expect(note.inharmonicity).toBeCloseTo(b, 4);
  expect(note.spectrum.step * note.spectrum.decibels.length).toBeGreaterThan(1900);
  const peak = note.spectrum.decibels.indexOf(Math.max(...note.spectrum.decibels)) * note.spectrum.step;
  expect(Math.abs(peak - f0)).toBeLessThan(2);
});
