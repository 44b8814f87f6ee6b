import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createGatherer, createRateCheck } from '../../src/instrument/microphone-blocks';

describe('blocks from the audio thread', () => {
  it('come out in order, none lost, none twice, whatever the runs they arrive in', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 300 }), { maxLength: 40 }),
        fc.integer({ min: 1, max: 128 }),
        (runs, size) => {
          const blocks: Float32Array[] = [];
          const gather = createGatherer(size, (block) => blocks.push(block));
          let next = 0;
          for (const length of runs) gather(Float32Array.from({ length }, () => next++));
          expect(blocks.length).toBe(Math.floor(next / size));
          expect(blocks.flatMap((block) => [...block])).toEqual(
            Array.from({ length: blocks.length * size }, (_, i) => i),
          );
        },
      ),
    );
  });
});

describe('the rate that a phone states', () => {
  /** Tells the check of blocks of 2048 at a true rate, `seconds` long; the last answer. */
  function after(seconds: number, stated: number, real: number, delay: (i: number) => number = () => 0): boolean {
    const isOff = createRateCheck(stated);
    let off = false;
    for (let i = 1; (i * 2048) / real <= seconds; i += 1) off = isOff(2048, ((i * 2048) / real) * 1000 + delay(i));
    return off;
  }

  it('is believed where the samples come at it', () => {
    for (const rate of [16_000, 44_100, 48_000, 96_000]) expect(after(60, rate, rate)).toBe(false);
  });

  it('is not believed at 44.1 kHz for 48 and the other way round, within 16 s', () => {
    expect(after(16, 48_000, 44_100)).toBe(true);
    expect(after(16, 44_100, 48_000)).toBe(true);
  });

  it('stands although a worker is held up now and then for 0.15 s', () => {
    expect(after(60, 48_000, 48_000, (i) => (i % 37 === 0 ? 150 : 0))).toBe(false);
  });

  it('is believed again after a pause', () => {
    const isOff = createRateCheck(48_000);
    let now = 0;
    for (let i = 0; i < 1500; i += 1) {
      now += (i === 700 ? 30_000 : 0) + (2048 / 48_000) * 1000;
      expect(isOff(2048, now)).toBe(false);
    }
  });
});
