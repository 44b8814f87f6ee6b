import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  distance,
  held,
  panned,
  pinched,
  scaleOf,
  toPicture,
  toScreen,
  turned,
  turnOf,
  wholeView,
  zoomed,
  zoomOf,
  type Spot,
} from '../../src/ui/view-transform';

const picture = { width: 4000, height: 3000 };
const stage = { width: 336, height: 420 };
const free = { least: 1e-9, most: 1e9 };
const spot = (least: number, most: number) =>
  fc.record({
    x: fc.double({ min: least, max: most, noNaN: true }),
    y: fc.double({ min: least, max: most, noNaN: true }),
  });
const view = fc
  .record({
    angle: fc.double({ min: -3, max: 3, noNaN: true }),
    zoom: fc.double({ min: 0.1, max: 10, noNaN: true }),
    by: spot(-500, 500),
  })
  .map(({ angle, zoom, by }) => panned(zoomed(turned(wholeView(picture, stage), by, angle), by, zoom, free), by));

const expectNear = (a: Spot, b: Spot, within: number): void => {
  expect(distance(a, b)).toBeLessThan(within);
};

describe('a picture on the screen', () => {
  it('lies whole in the middle at first', () => {
    const whole = wholeView(picture, stage);
    // By hand: 336/4000 = 0.084 is less than 420/3000 = 0.14; 3000 x 0.084 = 252, (420 - 252)/2 = 84 above it.
    expect(scaleOf(whole)).toBeCloseTo(0.084, 12);
    expectNear(toScreen(whole, { x: 0, y: 0 }), { x: 0, y: 84 }, 1e-9);
    expectNear(toScreen(whole, { x: 4000, y: 3000 }), { x: 336, y: 336 }, 1e-9);
  });

  it('turns clockwise as seen', () => {
    const quarter = turned({ re: 1, im: 0, x: 0, y: 0 }, { x: 0, y: 0 }, Math.PI / 2);
    // y runs down: what pointed right points down.
    expectNear(toScreen(quarter, { x: 1, y: 0 }), { x: 0, y: 1 }, 1e-12);
    expect(turnOf(quarter)).toBeCloseTo(Math.PI / 2, 12);
  });

  it('comes back from the screen to where it was', () => {
    fc.assert(fc.property(view, spot(0, 4000), (how, at) => expectNear(toPicture(how, toScreen(how, at)), at, 1e-6)));
  });

  it('sticks to both fingers', () => {
    fc.assert(
      fc.property(view, spot(0, 400), spot(0, 400), spot(0, 400), spot(0, 400), (how, a, b, c, d) => {
        fc.pre(distance(a, b) > 5 && distance(c, d) > 5);
        const under = [toPicture(how, a), toPicture(how, b)] as const;
        const after = pinched(how, [a, b], [c, d], free);
        expectNear(toScreen(after, under[0]), c, 1e-6);
        expectNear(toScreen(after, under[1]), d, 1e-6);
      }),
    );
  });

  it('keeps to the limits of zoom and still follows the fingers’ middle', () => {
    const zoom = zoomOf(picture, stage);
    const whole = wholeView(picture, stage);
    const wide = pinched(
      whole,
      [
        { x: 160, y: 200 },
        { x: 170, y: 200 },
      ],
      [
        { x: -1e5, y: 210 },
        { x: 1e5, y: 210 },
      ],
      zoom,
    );
    expect(scaleOf(wide)).toBeCloseTo(zoom.most, 9);
    expectNear(toScreen(wide, toPicture(whole, { x: 165, y: 200 })), { x: 0, y: 210 }, 1e-6);
    expect(scaleOf(zoomed(whole, { x: 0, y: 0 }, 1e-6, zoom))).toBeCloseTo(zoom.least, 9);
  });

  it('bears two fingers on one spot', () => {
    const at = { x: 10, y: 10 };
    const after = pinched(
      wholeView(picture, stage),
      [at, at],
      [
        { x: 20, y: 15 },
        { x: 90, y: 15 },
      ],
      free,
    );
    expect(Object.values(after).every(Number.isFinite)).toBe(true);
    expect(scaleOf(after)).toBeCloseTo(0.084, 12);
  });

  it('holds a spot while turned or zoomed about it', () => {
    fc.assert(
      fc.property(view, spot(0, 400), fc.double({ min: -7, max: 7, noNaN: true }), (how, at, angle) => {
        const under = toPicture(how, at);
        expectNear(toScreen(turned(how, at, angle), under), at, 1e-6);
        expectNear(toScreen(zoomed(how, at, 1.7, free), under), at, 1e-6);
        expect(scaleOf(turned(how, at, angle))).toBeCloseTo(scaleOf(how), 9);
      }),
    );
  });

  it('cannot be pushed out of sight', () => {
    fc.assert(
      fc.property(view, spot(-1e5, 1e5), (how, by) => {
        const shown = toPicture(held(panned(how, by), picture, stage), { x: 168, y: 210 });
        expect(shown.x).toBeGreaterThan(-1e-6);
        expect(shown.x).toBeLessThan(4000 + 1e-6);
        expect(shown.y).toBeGreaterThan(-1e-6);
        expect(shown.y).toBeLessThan(3000 + 1e-6);
      }),
    );
    const still = wholeView(picture, stage);
    expect(held(still, picture, stage)).toEqual(still);
  });
});
