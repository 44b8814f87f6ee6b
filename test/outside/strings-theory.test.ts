// The transform against mathjs's, and the bound that our errors are held against, against its published form.
import * as math from 'mathjs';
import { expect, test } from 'vitest';
import { spectrumOf } from '../../src/signal/spectrum';
import { frequencyInformation, gaussian, random } from '../support/plucks';

test('the transform of real samples is the one mathjs finds', () => {
  const normal = gaussian(random(5));
  const samples = Array.from({ length: 200 }, normal);
  const padded = [...samples, ...Array.from({ length: 56 }, () => 0)];
  const theirs = math.fft(padded as unknown as math.Complex[]);
  const { re, im, step } = spectrumOf(samples, 256, 4800);
  expect(step).toBeCloseTo(4800 / 256, 12);
  for (let k = 0; k <= 128; k += 1) {
    expect(re[k]).toBeCloseTo(theirs[k]!.re, 9);
    expect(im[k]).toBeCloseTo(theirs[k]!.im, 9);
  }
});

test('undamped, the information on a frequency is Rife and Boorstyn (1974): var w = 12 s²/(b² T² N (N² - 1)), from memory', () => {
  // A real tone of amplitude A in noise of variance s² is a complex one of b = A with noise 2 s² per sample.
  const [amplitude, variance, rate, n] = [0.3, 0.02, 48000, 48000];
  const bound = (12 * variance) / (amplitude ** 2 * (1 / rate) ** 2 * n * (n ** 2 - 1));
  const information = frequencyInformation(amplitude, 0, n / rate, (2 * variance) / rate);
  expect(information * 2 * bound).toBeCloseTo(1, 6);
});

test('damped, the information is the integral it stands for', () => {
  const [amplitude, decay, duration, density] = [0.7, 4, 1, 1e-6];
  const steps = 200_000;
  const moments = [0, 0, 0];
  for (let i = 0; i < steps; i += 1) {
    const t = ((i + 0.5) * duration) / steps;
    for (let m = 0; m < 3; m += 1) moments[m]! += (t ** m * Math.exp(-2 * decay * t) * duration) / steps;
  }
  const [g0, g1, g2] = moments as [number, number, number];
  const expected = (amplitude ** 2 / density) * (g2 - g1 ** 2 / g0);
  expect(frequencyInformation(amplitude, decay, duration, density) / expected).toBeCloseTo(1, 6);
});
