import { describe, expect, it } from 'vitest';
import { calculators, situation } from '../../../test/support/calculators';
import { coarseThreads } from '../../reference/threads';
import type { Choices } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import calc from './index';
import { clockText, placeWords } from './turning';

const tram = calculators.find(([id]) => id === 'bed-tram')![1];
type Line = readonly [x: number, y: number, z: number | string];

function measure(lines: readonly Line[], choices: Choices = {}, more: Record<string, string> = {}) {
  const given: Record<string, string> = { ...more };
  lines.forEach(([x, y, z], i) => {
    Object.assign(given, { [`x_${i + 1}`]: `${x} ± 0`, [`y_${i + 1}`]: `${y} ± 0`, [`z_${i + 1}`]: String(z) });
  });
  return evaluate(tram, situation(tram, given, choices));
}

const corners = (fl: number, fr: number, br: number, bl: number, half = 0.01): Line[] => [
  [30, 30, `${fl} ± ${half}`],
  [190, 30, `${fr} ± ${half}`],
  [190, 190, `${br} ± ${half}`],
  [30, 190, `${bl} ± ${half}`],
];
const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;
const moves = (found: ReturnType<typeof evaluate>) =>
  Object.fromEntries(
    (found.instruction?.movements ?? []).map(({ part, direction, amount }) => [part, { direction, amount }]),
  );

describe('which way a knob is turned', () => {
  const high: Line[] = corners(0, 0, 0, 0.6, 0.001);

  // Right-hand screw theory, and nuts on studs: a nut run up a hanging screw from below pulls the bed down. Seen from above
  // that is anticlockwise. The others by the same rule.
  it.each([
    ['nut', 'right', 'anticlockwise'],
    ['nut', 'left', 'clockwise'],
    ['screw', 'right', 'clockwise'],
    ['screw', 'left', 'anticlockwise'],
    ['rest', 'right', 'clockwise'],
    ['rest', 'left', 'anticlockwise'],
    ['z', 'right', 'anticlockwise'],
    ['z', 'left', 'clockwise'],
    ['raises', 'left', 'anticlockwise'],
    ['lowers', 'left', 'clockwise'],
  ])('to lower the bed, %s with a %s-hand thread: %s, seen from above', (build, hand, way) => {
    const found = moves(measure(high, { build, hand, keep_4: '2' }));
    expect(found['back left adjuster']?.direction).toBe(way);
  });

  it('mirrors when the readings mirror, up and down', () => {
    for (const keep_4 of ['1', '3', 'all']) {
      const up = moves(measure(corners(0, 0.3, 0.5, 0.2), { keep_4 }));
      const down = moves(measure(corners(0, -0.3, -0.5, -0.2), { keep_4 }));
      expect(Object.keys(up).length).toBeGreaterThan(1);
      expect(Object.keys(down)).toEqual(Object.keys(up));
      for (const [part, { direction, amount }] of Object.entries(up)) {
        expect(down[part]!.direction).toBe(opposite[direction as 'clockwise']);
        expect(down[part]!.amount).toBeCloseTo(amount, 12);
      }
    }
  });

  it('mirrors when the readings mirror, left and right', () => {
    const there = moves(measure(corners(0, 0.3, 0.5, 0.2), { keep_4: 'all' }));
    const back = moves(measure(corners(0.3, 0, 0.2, 0.5), { keep_4: 'all' }));
    for (const [part, move] of Object.entries(there)) {
      const swapped = part.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'));
      expect(back[swapped]!.direction).toBe(move.direction);
      expect(back[swapped]!.amount).toBeCloseTo(move.amount, 12);
    }
  });

  it('turns the other way for gaps than for heights', () => {
    const heights = moves(measure(corners(0, 0.3, 0.5, 0.2), { by: 'height' }));
    const gaps = moves(measure(corners(0, 0.3, 0.5, 0.2), { by: 'gap' }));
    for (const [part, { direction }] of Object.entries(heights))
      expect(gaps[part]!.direction).toBe(opposite[direction as 'clockwise']);
  });
});

describe('after the turns', () => {
  // Raising each adjuster by turn × pitch, as a plate moves on three points, leaves no tilt: the fit of the moved points.
  it.each(['front', 'back'])('a plate on three adjusters (%s) is level', (layout) => {
    for (const keep_3 of ['1', '2', '3', 'all']) {
      const lines: Line[] = [
        [20, 15, 0.31],
        [200, 30, -0.12],
        [180, 205, 0.08],
        [25, 190, 0.44],
        [110, 100, 0.2],
      ];
      const found = measure(lines, { layout, keep_3 });
      const value = (symbol: string): number => {
        const outcome = found.outcomes[symbol];
        if (!outcome?.ok) throw new Error(symbol);
        return outcome.value;
      };
      const [A, B, C] = [1, 2, 3].map((i) => ({
        x: value(`X_${i}`),
        y: value(`Y_${i}`),
        lift: (value(`psi_${i}`) / (2 * Math.PI)) * 0.7e-3,
      })) as [Corner, Corner, Corner];
      const moved = lines.map(([x, y, z]): Line => [x, y, Number(z) + 1e3 * lift(x / 1e3, y / 1e3, A, B, C)]);
      const after = measure(moved, { layout, keep_3 });
      for (const symbol of ['i_x', 'i_y']) {
        const outcome = after.outcomes[symbol];
        expect(outcome?.ok && Math.abs(outcome.value)).toBeLessThan(1e-12);
      }
      const F = after.outcomes.F;
      expect(F?.ok && F.value).toBeCloseTo(value('F'), 12);
    }
  });
});

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly lift: number;
}

/** Lift of a stiff plate at a place, from its lifts at three: barycentric coordinates. */
function lift(x: number, y: number, a: Corner, b: Corner, c: Corner): number {
  const area = (p: { x: number; y: number }, q: { x: number; y: number }, r: { x: number; y: number }): number =>
    (q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y);
  const here = { x, y };
  return (area(here, b, c) * a.lift + area(a, here, c) * b.lift + area(a, b, here) * c.lift) / area(a, b, c);
}

describe('what is said', () => {
  it('starts with the farthest off, and with four brings the last to touch', () => {
    const found = measure(corners(0, 0.1, 0.4, 0.25, 0.002), { keep_4: '1' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction!.headline).toMatch(
      /^Turn the back right adjuster just under 5\/8 turn anticlockwise \(\d+(\.\d)?°\), seen from above/,
    );
    const steps = found.instruction!.steps.join('\n');
    expect(steps).toMatch(/the front right adjuster comes last/);
    expect(steps.indexOf('The back right adjuster:')).toBeLessThan(steps.indexOf('The back left adjuster:'));
    expect(steps).toMatch(/Last the front right adjuster: .* but stop where it just takes up the load/);
    expect(steps).toMatch(/Leave the front left adjuster: the others are counted from it/);
    expect(steps).toMatch(/lowers the middle of the bed by/);
  });

  it('says which turns are less than a hand can set, and which less than the readings tell', () => {
    const small = measure(corners(0, 0.01, 0.3, 0.29, 0.001), { keep_4: '1' });
    expect(small.instruction!.steps.join(' ')).toMatch(
      /front right adjuster: back to where it stood \(less than a hand can set\)/,
    );
    expect(moves(small)).not.toHaveProperty('front right adjuster');
    const rough = measure(corners(0, 0.1, 0.5, 0.4, 0.1), { keep_4: '1' });
    expect(rough.instruction!.steps.join(' ')).toMatch(/less than these readings can tell/);
  });

  it('judges tilt and warp apart', () => {
    const bowl = measure([...corners(0, 0, 0, 0), [110, 110, '-0.3 ± 0.01']]);
    expect(bowl.verdict.checks.map(({ state }) => state)).toEqual(['within', 'within', 'beyond']);
    expect(bowl.instruction!.headline).toMatch(/^Turn nothing: .* 0\.300?\smm of warp is left that no screw can fix/);
    expect(bowl.instruction!.steps[0]).toMatch(/point 5 0\.240?\smm below it/);
    expect(bowl.instruction!.movements).toEqual([]);
    expect(measure([...corners(0, 0, 0, 0), [110, 110, '-0.3']], { judge: 'tilt' }).verdict.state).toBe('within');
  });

  it('is too close to call where the doubt is larger than what matters', () => {
    const rough = measure(corners(0, 0.02, 0.05, 0.03, 0.1));
    expect(rough.verdict.state).toBe('too close');
    expect(rough.instruction).toMatchObject({ measureAgain: true });
    expect(rough.instruction!.movements ?? []).toEqual([]);
    const warped = measure(corners(0.025, -0.025, 0.025, -0.025, 0.01), { judge: 'both' });
    expect(warped.verdict.checks.map(({ state }) => state)).toEqual(['within', 'within', 'within']);
    const doubtful = measure(corners(0.05, -0.05, 0.05, -0.05, 0.01));
    expect(doubtful.verdict.checks.at(-1)?.state).toBe('too close');
    expect(doubtful.instruction!.headline).toMatch(/flat enough is too close to call/);
  });

  it('has no verdict on warp from three points, and says so', () => {
    const three = corners(0, 0, 0, 0).slice(0, 3);
    const both = measure(three);
    expect(both.verdict.state).toBe('none');
    expect(both.instruction!.steps.join(' ')).toMatch(/Three points always lie in a plane/);
    expect(measure(three, { judge: 'tilt' }).verdict.state).toBe('within');
  });

  it('refuses too few points, points in one line, and a height without a place', () => {
    expect(measure([]).cannot).toMatch(/^No point so far: .*at least three/);
    expect(measure(corners(0, 0, 0, 0).slice(0, 2)).cannot).toMatch(/^Two points so far/);
    expect(
      measure([
        [0, 0, 0],
        [50, 50, 0.1],
        [100, 100, 0],
      ]).cannot,
    ).toMatch(/all lie in one line/);
    const found = evaluate(tram, situation(tram, { z_1: '0.1' }));
    expect(found.cannot).toMatch(/^Point 1 has a height but no place/);
  });

  it('counts only lines with a reading: places filled in beforehand wait', () => {
    const given: Record<string, string> = {};
    corners(0, 0.1, 0.2, 0.1).forEach(([x, y, z], i) =>
      Object.assign(given, { [`x_${i + 1}`]: String(x), [`y_${i + 1}`]: String(y), [`z_${i + 1}`]: String(z) }),
    );
    const bare = evaluate(tram, situation(tram, given)).outcomes.i_x;
    const more = evaluate(tram, situation(tram, { ...given, x_5: '110', y_5: '110' })).outcomes.i_x;
    expect(more).toEqual(bare);
  });
});

describe('the doubt', () => {
  // Four corners, equal doubt: each slope rests on two pairs 160 mm apart, so u = u_z / 160 (JCGM 100, 5.1.2, by hand).
  it('of a slope is that of the heights over the distance', () => {
    const outcome = measure(corners(0, 0, 0, 0)).outcomes.i_x;
    expect(outcome?.ok && outcome.u).toBeCloseTo(0.01e-3 / Math.sqrt(3) / 0.16, 12);
  });

  it('of the adjuster left alone is none: the others are counted from it', () => {
    const outcome = measure(corners(0, 0.1, 0.2, 0.1), { keep_4: '1' }).outcomes.psi_1;
    expect(outcome).toMatchObject({ ok: true, value: 0, u: 0 });
  });
});

describe('words', () => {
  it('are the nearest fraction on a clock', () => {
    const turn = 2 * Math.PI;
    expect([0.02, 0.08, 0.26, 0.28, 0.49, 0.97, 1, 1.3, 2.26, 5.99].map((n) => clockText(n * turn))).toEqual([
      '',
      '1/12 turn',
      '1/4 turn',
      'just over 1/4 turn',
      '1/2 turn',
      'just under 1 turn',
      '1 turn',
      'just under 1 1/3 turns',
      '2 1/4 turns',
      '6 turns',
    ]);
    expect(clockText(-0.25 * turn)).toBe('1/4 turn');
  });

  it('say where on the bed', () => {
    expect(placeWords(10, 10, 200, 200)).toBe('front left');
    expect(placeWords(100, 190, 200, 200)).toBe('back middle');
    expect(placeWords(190, 100, 200, 200)).toBe('right middle');
    expect(placeWords(100, 100, 200, 200)).toBe('middle');
  });
});

describe('the pitches', () => {
  it.each(Object.entries(calc.choices.thread.options))('%s is ISO 261’s', (name, { set }) => {
    const thread = coarseThreads.find((one) => one.name === name);
    expect(set).toEqual({ P_s: thread?.P });
  });
});
