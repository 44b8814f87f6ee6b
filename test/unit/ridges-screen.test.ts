import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  handlePlace,
  marksInView,
  moveHandle,
  pointingAt,
  cornersOf,
  type HandleId,
} from '../../src/app/phone/photo/marks';
import { readDistance, readLayer, type ScaleEntry } from '../../src/app/phone/photo/scale';
import { length } from '../../src/quantity/kinds';
import { handleSpot, HANDLE_RADIUS, HANDLE_REACH } from '../../src/ui/handle-place';
import { distance, wholeView } from '../../src/ui/view-transform';

const picture = { width: 4000, height: 3000 };
const stage = { width: 336, height: 420 };
const view = wholeView(picture, stage);
const marks = marksInView(view, stage, picture);
const ids: readonly HandleId[] = ['end 1', 'end 2', 'width', 'strip', 'mark A', 'mark B'];
const spot = fc.record({ x: fc.integer({ min: -5000, max: 9000 }), y: fc.integer({ min: -5000, max: 9000 }) });

describe('marks on the picture', () => {
  it('lie inside it at first, unset, and the strip has a length and a width', () => {
    // By hand: the picture is 252 px high on the stage from 84 to 336, so shares 0.2 and 0.8 (84 and 336) are its edges.
    expect(marks.strip.from.x).toBeCloseTo(2000, 6);
    expect(marks.strip.from.y).toBeCloseTo(0, 6);
    expect(marks.strip.to.y).toBeCloseTo(3000, 6);
    expect(marks.strip.width).toBeCloseTo((336 * 0.2) / 0.084, 6);
    expect(marks.scale.map((mark) => mark.pointing)).toEqual([undefined, undefined]);
  });

  it('a handle brings its own point to where it is put, and moves no other', () => {
    const inside = fc.record({ x: fc.integer({ min: 900, max: 3100 }), y: fc.integer({ min: 0, max: 3000 }) });
    fc.assert(
      fc.property(fc.constantFrom<HandleId>('end 1', 'end 2', 'mark A', 'mark B'), inside, (id, to) => {
        const after = moveHandle(marks, id, to, picture, 5);
        expect(distance(handlePlace(after, id).at, to)).toBeLessThan(1e-9);
        for (const other of ids.filter((one) => /end|mark/.test(one) && one !== id)) {
          expect(handlePlace(after, other).at).toEqual(handlePlace(marks, other).at);
        }
      }),
    );
  });

  it('the width follows its handle on either side; the whole strip keeps its length', () => {
    const wide = moveHandle(marks, 'width', { x: 2300, y: 1500 }, picture, 5);
    expect(wide.strip.width).toBeCloseTo(600, 6);
    expect(moveHandle(marks, 'width', { x: 1700, y: 10 }, picture, 5).strip.width).toBeCloseTo(600, 6);
    fc.assert(
      fc.property(spot, (to) => {
        const { strip } = moveHandle(marks, 'strip', to, picture, 5);
        expect(distance(strip.from, strip.to)).toBeCloseTo(3000, 6);
      }),
    );
  });

  it('nothing leaves the picture, and a mark once set says how closely', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...ids), spot), { maxLength: 8 }), (moves) => {
        const after = moves.reduce((now, [id, to]) => moveHandle(now, id, to, picture, 5), marks);
        for (const { x, y } of [after.strip.from, after.strip.to, ...after.scale.map((mark) => mark.at)]) {
          expect(x).toBeGreaterThanOrEqual(-1e-6);
          expect(x).toBeLessThanOrEqual(4000 + 1e-6);
          expect(y).toBeGreaterThanOrEqual(-1e-6);
          expect(y).toBeLessThanOrEqual(3000 + 1e-6);
        }
        expect(after.strip.width).toBeGreaterThan(0);
        expect(
          cornersOf(after.strip)
            .flatMap(({ x, y }) => [x, y])
            .every(Number.isFinite),
        ).toBe(true);
        const touched = moves.some(([id]) => id === 'mark A');
        expect(after.scale[0].pointing).toBe(touched ? 5 : undefined);
      }),
    );
  });

  it('a mark is set as closely as the zoom, the view drawn and a pixel allow', () => {
    // 1.5 screen pixels at 0.084 screen pixels per picture pixel.
    expect(pointingAt(view, 0.5)).toBeCloseTo(1.5 / 0.084, 9);
    expect(pointingAt({ ...view, re: 6 }, 0.25)).toBe(4);
    expect(pointingAt({ ...view, re: 6 }, 1)).toBe(1);
  });
});

describe('a handle beside its point', () => {
  it('lies on the stage, clear of the point, wherever the point is in view', () => {
    const within = fc.record({ x: fc.integer({ min: 0, max: 336 }), y: fc.integer({ min: 0, max: 420 }) });
    fc.assert(
      fc.property(within, within, (at, from) => {
        const handle = handleSpot(at, from, stage)!;
        expect(distance(handle, at)).toBeCloseTo(HANDLE_REACH, 6);
        expect(HANDLE_REACH).toBeGreaterThan(2 * HANDLE_RADIUS);
      }),
    );
    // Straight above the upper edge there is no room: it lies to a side.
    const aside = handleSpot({ x: 168, y: 10 }, { x: 168, y: 300 }, stage)!;
    expect(aside.y).toBeGreaterThanOrEqual(HANDLE_RADIUS);
    expect(handleSpot({ x: -20, y: 100 }, { x: 100, y: 100 }, stage)).toBeUndefined();
  });
});

describe('the distance between the marks', () => {
  const entry: ScaleEntry = { standard: 'rule', text: '', layers: '', layer: '' };
  const read = (part: Partial<ScaleEntry>, kept?: { value: number; half: number }) =>
    readDistance({ ...entry, ...part }, kept, length.mm.unit, 'point');

  it('takes the ± typed, else that of the standard', () => {
    expect(read({ text: '40 ± 0.2' })).toEqual({
      ok: true,
      value: { distance: 0.04, halfWidth: expect.closeTo(0.0002, 12) as number, measured: 'points' },
    });
    expect(read({ text: '40' })).toMatchObject({ value: { halfWidth: expect.closeTo(0.0001, 12) as number } });
    expect(read({ text: '40', standard: 'jaws' })).toMatchObject({ value: { halfWidth: 0.00003 } });
    expect(read({ text: '2 in', standard: 'height' })).toMatchObject({
      value: { distance: expect.closeTo(0.0508, 12) as number, measured: 'across' },
    });
  });

  it('brings a rule that stands before the wall onto it, by like triangles', () => {
    // By hand: 5 mm before the wall at 255 mm, 250 mm from the lens: 100 mm of rule hide 100 x 255/250 = 102 mm of wall.
    const before = { text: '100 ± 0', place: 'before', before: '5 ± 0.5', away: '255 ± 0' } as const;
    expect(read(before)).toMatchObject({
      value: {
        distance: expect.closeTo(0.102, 9) as number,
        // 0.5 mm of 250 mm is 0.2 %.
        halfWidth: expect.closeTo(0.102 * 0.002, 9) as number,
      },
    });
    expect(read({ ...before, before: '' })).toMatchObject({ ok: false, blank: true });
    expect(read({ ...before, before: '200' })).toMatchObject({ ok: false, blank: false });
    // A height measured on the wall stands on it.
    expect(read({ ...before, standard: 'height', text: '40' })).toMatchObject({ value: { distance: 0.04 } });
  });

  it('multiplies layers by their height, the machine’s where none is typed', () => {
    // By hand: 200 x 0.2 mm = 40 mm; 0.5 % of it is 0.2 mm.
    expect(read({ standard: 'layers', layers: '200', layer: '0.2' })).toEqual({
      ok: true,
      value: {
        distance: expect.closeTo(0.04, 12) as number,
        halfWidth: expect.closeTo(0.0002, 12) as number,
        measured: 'across',
      },
    });
    // One layer in 50 doubtful is 2 %, with 0.5 %: 2.06 %.
    expect(read({ standard: 'layers', layers: '50 ± 1' }, { value: 0.0002, half: 0 })).toMatchObject({
      value: { halfWidth: expect.closeTo(0.01 * Math.hypot(0.02, 0.005), 12) as number },
    });
    expect(read({ standard: 'layers', layers: '50' })).toMatchObject({ ok: false, blank: true });
  });

  it('refuses what is no distance with a sentence, and takes an empty box for not yet entered', () => {
    expect(read({})).toMatchObject({ ok: false, blank: true });
    for (const text of ['x', '0', '-4', '40 ± 40', '3 m', '40 N', '4.4.4']) {
      const said = read({ text });
      expect(said).toMatchObject({ ok: false, blank: false });
      expect(said.ok ? '' : said.reason).toMatch(/^.{15,}[.]$/);
    }
    for (const layers of ['2.5', '0', '-3', 'ten']) {
      expect(read({ standard: 'layers', layers, layer: '0.2' })).toMatchObject({ ok: false, blank: false });
    }
    expect(readLayer('0.2 N', undefined, length.mm.unit, 'point')).toMatchObject({ ok: false, blank: false });
  });
});
