import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { levelOf } from '../../src/signal/level-reversal';

describe('numpy, where it is installed', () => {
  let there = true;
  try {
    execFileSync('python3', ['-c', 'import numpy'], { stdio: 'ignore' });
  } catch {
    there = false;
    console.log('SKIPPED: python3-numpy is not installed; the reversal is checked by mathjs alone.');
  }
  it.skipIf(!there)('finds the same tilt and zero error by least squares from three pairs', () => {
    const firsts = [0.0121, 0.0118, 0.0125];
    const seconds = [0.0079, 0.0083, 0.0076];
    const script = `
import numpy, json
a = numpy.array([[1, 1]] * 3 + [[-1, 1]] * 3)
print(json.dumps(list(numpy.linalg.lstsq(a, numpy.array(${JSON.stringify([...firsts, ...seconds])}), rcond=None)[0])))`;
    const [tilt, zero] = JSON.parse(execFileSync('python3', ['-c', script]).toString()) as [number, number];
    const one = (sine: number) => ({ along: { sine, u: 1e-5, steps: 0 }, across: { sine: 0, u: 1e-5, steps: 0 } });
    const pairs = firsts.map((first, i) => ({ first: one(first), second: one(seconds[i]!) }));
    const level = levelOf(pairs, { laying: 1e-3, direction: 0.05 });
    expect(Math.sin(Math.atan(level.slope))).toBeCloseTo(tilt, 12);
    expect(level.zero).toBeCloseTo(zero, 12);
  });
});
