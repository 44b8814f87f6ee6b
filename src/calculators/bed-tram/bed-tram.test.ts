import { describe, expect, it } from 'vitest';
import { calculators, situation } from '../../../test/support/calculators';
import { coarseThreads } from '../../reference/threads';
import type { Choices } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import { choices } from './choices';
import { model } from './model';
import { cells, tables } from './points';
import { adjustersOf, setTurn, spotOf, wholeTurns, type Layout } from './turning';
import { twistStiffness } from './twist';
import words from './words/en';

const tram = calculators.find(([id]) => id === 'bed-tram')![1];
type Line = readonly [x: number, y: number, z: number | string];

function measure(lines: readonly Line[], choices: Choices = {}, more: Record<string, string> = {}) {
  // A plate too stiff for its springs, its adjusters 160 mm apart, where nothing else is said.
  const given: Record<string, string> = { d_b: '20', W: '200 ± 1', D: '200 ± 1', b_a: '20 ± 1', ...more };
  lines.forEach(([x, y, z], i) => {
    Object.assign(given, { [`x_${i + 1}`]: `${x} ± 0`, [`y_${i + 1}`]: `${y} ± 0`, [`z_${i + 1}`]: String(z) });
  });
  return evaluate(tram, situation(tram, given, { by: 'height', ...choices }));
}

const corners = (fl: number, fr: number, br: number, bl: number, half = 0.01): Line[] => [
  [20, 20, `${fl} ± ${half}`],
  [180, 20, `${fr} ± ${half}`],
  [180, 180, `${br} ± ${half}`],
  [20, 180, `${bl} ± ${half}`],
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

/** What is told: the key of the order, its arguments, and its steps by key. */
function told(found: ReturnType<typeof evaluate>) {
  const { say, args, steps } = found.instruction!.order;
  return { say, args, keys: steps.map((one) => one.say), step: (key: string) => steps.find((one) => one.say === key) };
}

describe('what is said', () => {
  it('starts with the farthest off, and with four brings the last to touch', () => {
    const found = measure(corners(0, 0.1, 0.4, 0.25, 0.002), { keep_4: '1' });
    expect(found.verdict.state).toBe('beyond');
    const { say, args, keys, step } = told(found);
    expect(say).toBe('turnSet');
    expect(args).toMatchObject({
      at: { name: 'back right', n: 3 },
      turn: { way: 'anticlockwise', turns: 0 },
      more: 2,
    });
    expect(keys).toEqual([
      'liftNozzle',
      'stiffPlate',
      'fromAbove',
      'fourthLast',
      'turnBy',
      'turnBy',
      'turnLastBy',
      'leaveOne',
      'middleMoves',
      'measureAll',
      'leftOver',
    ]);
    const turned = found.instruction!.order.steps.filter((one) => one.say === 'turnBy').map(({ args }) => args.at);
    expect(turned).toMatchObject([{ name: 'back right' }, { name: 'back left' }]);
    expect(step('fourthLast')?.args.at).toMatchObject({ name: 'front right' });
    expect(step('turnLastBy')?.args.at).toMatchObject({ name: 'front right' });
    expect(step('leaveOne')?.args).toMatchObject({ at: { name: 'front left' }, why: 'still' });
    expect(step('middleMoves')?.args.raises).toBe(false);
    expect(found.instruction!.sentence).toContain('210°');
  });

  it('names the place of an adjuster that has only a number', () => {
    const places = { X_a: '10', Y_a: '10', X_b: '210', Y_b: '10', X_c: '110', Y_c: '210' };
    const { args, step } = told(measure(corners(0, 0, 0.5, 0.5), { layout: 'three', keep_3: '1' }, places));
    expect(args.at).toEqual({ name: 'third', spot: 'back middle', n: 3 });
    expect(step('turnBy')?.args.at).toEqual({ name: 'third', spot: 'back middle', n: 3 });
    expect(told(measure(corners(0, 0, 0.5, 0.5))).step('turnBy')?.args.at).toMatchObject({ spot: undefined });
  });

  it('says which turns are less than a hand can set', () => {
    const small = measure(corners(0, 0.009, 0.3, 0.291, 0.001), { keep_4: '1' });
    expect(told(small).step('returnLast')?.args).toMatchObject({ at: { name: 'front right' }, why: 'small' });
    expect(moves(small)['front right adjuster']!.amount).toBe(0);
  });

  it('leaves all where none has to turn by as much as a hand can set', () => {
    const found = measure(
      corners(0, 0.05, 0.05, 0, 0.001),
      { keep_4: 'all', build: 'z' },
      { phi_h: '10', k_F: '0.25', k_t: '0.25' },
    );
    expect(found.verdict.state).toBe('beyond');
    // Half of 0.05 mm either way is less than half of 10° at 8 mm a turn. 0.062 mm over a diagonal is too near to a quarter of 0.25 mm.
    expect(told(found).say).toBe('coarseThread');
    expect(found.instruction!.order.effect).toEqual({ h_1: 3e-4 });
    expect(found.instruction!.movements).toEqual([]);
  });

  it('judges tilt and warp apart', () => {
    const bowl = measure([...corners(0, 0, 0, 0), [100, 100, '-0.3 ± 0.01']]);
    expect(bowl.verdict.checks.map(({ state }) => state)).toEqual(['within', 'within', 'beyond']);
    expect(told(bowl).say).toBe('turnNothing');
    expect(told(bowl).keys).toEqual(['leftOver', 'freeBed', 'shimLowPlace']);
    expect((told(bowl).args.left as { si: number }).si).toBeCloseTo(0.3e-3, 9);
    const { low } = told(bowl).step('leftOver')!.args as { low: { point: number; by: { si: number } } };
    expect(low.point).toBe(5);
    expect(low.by.si).toBeCloseTo(-0.24e-3, 9);
    expect(bowl.instruction!.movements).toEqual([]);
    expect(measure([...corners(0, 0, 0, 0), [100, 100, '-0.3']], { judge: 'tilt' }).verdict.state).toBe('within');
  });

  it('is too close to call where the doubt is larger than what matters', () => {
    const rough = measure(corners(0, 0.02, 0.05, 0.03, 0.1));
    expect(rough.verdict.state).toBe('too close');
    expect(rough.instruction).toMatchObject({ measureAgain: true });
    expect(rough.instruction!.movements).toEqual([]);
    const warped = measure(corners(0.025, -0.025, 0.025, -0.025, 0.01), { judge: 'both' });
    expect(warped.verdict.checks.map(({ state }) => state)).toEqual(['within', 'within', 'within']);
    const doubtful = measure(corners(0.05, -0.05, 0.05, -0.05, 0.01));
    expect(doubtful.verdict.checks.at(-1)?.state).toBe('too close');
    expect(told(doubtful)).toMatchObject({ say: 'flatUnsure', keys: ['leftOverUnsure', 'pointsFinerTool'] });
  });

  it('has no verdict on warp from three points, and says so', () => {
    const three = corners(0, 0, 0, 0).slice(0, 3);
    const both = measure(three);
    expect(both.verdict.state).toBe('none');
    expect(told(both).keys).toContain('threePoints');
    expect(measure(three, { judge: 'tilt' }).verdict.state).toBe('within');
  });

  it('refuses too few points, points in one line, and a height without a place', () => {
    const { problems } = words;
    expect(measure([]).cannot).toBe(problems.tooFew({ points: 0 }));
    expect(measure(corners(0, 0, 0, 0).slice(0, 2)).cannot).toBe(problems.tooFew({ points: 2 }));
    expect(
      measure([
        [0, 0, 0],
        [50, 50, 0.1],
        [100, 100, 0],
      ]).cannot,
    ).toBe(problems.inOneLine);
    const found = model.compute({ z_1: { value: 1e-4, u: 0, shape: 'normal' } }, {});
    expect(found).toEqual({ ok: false, problem: { say: 'noPlace', args: { line: 1 } } });
    expect(evaluate(tram, situation(tram, { z_1: '0.1' })).cannot).toMatch(/1/);
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

describe('a turn as a hand sets it', () => {
  const degree = Math.PI / 180;

  it.each([
    [94, 10, 90],
    [96, 10, 100],
    [-94, 10, 90],
    [82.2857, 15, 75],
    [544, 90, 540],
  ])('%d° in steps of %d°: %d°', (angle, step, set) => {
    expect((setTurn(angle * degree, step * degree) ?? 0) / degree).toBeCloseTo(set, 9);
  });

  it('is none below half a step', () => {
    expect(setTurn(4.9 * degree, 10 * degree)).toBeUndefined();
  });

  it('is whole turns and an angle', () => {
    expect(wholeTurns(720 * degree)).toEqual({ turns: 2, rest: 0 });
    expect(wholeTurns(450 * degree)).toMatchObject({ turns: 1 });
    expect(wholeTurns(450 * degree).rest / degree).toBeCloseTo(90, 9);
    const count = (angle: number, rest?: string) => words.figure.adjuster(2, wholeTurns(angle * degree).turns, rest);
    expect([count(0), count(90, '90°'), count(450, '90°'), count(720)]).toEqual([
      '2: leave',
      '2: 90°',
      '2: 1 × 90°',
      '2: 2 ×',
    ]);
  });
});

describe('four adjusters', () => {
  const amounts = (found: ReturnType<typeof evaluate>) =>
    Object.fromEntries(
      (found.instruction?.movements ?? []).map(({ part, amount }) => [part, Math.round((amount * 180) / Math.PI)]),
    );
  const thin = { d_b: '3 ± 0', k_s: '5 ± 0', y_s: '5 ± 0' };

  // 0.35 mm at 0.7 mm a turn: half a turn of the one corner that is high.
  it('of a thin plate on springs set each its own corner: one high corner is lowered, and no good one with it', () => {
    const found = measure(corners(0, 0, 0.35, 0, 0.002), {}, thin);
    expect(found.verdict.state).toBe('beyond');
    expect(amounts(found)).toEqual({ 'back right adjuster': 180 });
    expect(moves(found)['back right adjuster']!.direction).toBe('anticlockwise');
    const [z_1, z_2, z_3, z_4] = [1, 2, 3, 4].map((n) => found.instruction!.order.effect?.[`z_${n}`]);
    for (const one of [z_1, z_2, z_3, z_4]) expect(one).toBeCloseTo(0, 9);
  });

  it('of a thin plate take out a twist without any tilt', () => {
    const found = measure(corners(0.1, -0.1, 0.1, -0.1, 0.002), {}, thin);
    expect(found.verdict.checks.map(({ state }) => state)).toEqual(['within', 'within', 'beyond']);
    // 0.2 mm from one pair to the other, 103° at 0.7 mm a turn, to the nearest 10°.
    expect(amounts(found)).toEqual({ 'front right adjuster': 100, 'back left adjuster': 100 });
  });

  it('of a stiff plate turn two opposite corners, not the two good ones', () => {
    const found = measure(corners(0, 0, 0.35, 0, 0.002));
    expect(Object.keys(amounts(found)).sort()).toEqual(['back right adjuster', 'front left adjuster'].sort());
    expect(told(found).keys).toContain('stiffPlate');
    expect(told(measure(corners(0, 0, 0.35, 0, 0.002), {}, thin)).keys).toContain('thinPlate');
  });

  // Saint-Venant's torsion of a strip, b t³ / 3: the same force by another road.
  it('are as stiff as a strip in torsion', () => {
    const [E, nu, t, a, b] = [70e9, 0.3, 3e-3, 0.16, 0.14];
    const G = E / (2 * (1 + nu));
    const twisted = (G * ((b * t ** 3) / 3) * (4 / b)) / a / b;
    expect(twistStiffness(E, nu, t, a, b) / twisted).toBeCloseTo(1, 12);
    const found = measure(corners(0, 0, 0.35, 0), {}, { ...thin, E_b: '70 ± 0', nu_b: '0.3' });
    const K = found.outcomes.K_b;
    expect(K?.ok && K.value / twistStiffness(E, nu, t, 0.16, 0.16)).toBeCloseTo(1, 9);
  });
});

describe('what is read', () => {
  it('is a gap where nothing is picked, as the usual tool reads one: the wider gap is the lower bed', () => {
    const given: Record<string, string> = { d_b: '20' };
    corners(0.1, 0.1, 0.4, 0.4, 0.01).forEach(([x, y, z], i) =>
      Object.assign(given, { [`x_${i + 1}`]: String(x), [`y_${i + 1}`]: String(y), [`z_${i + 1}`]: String(z) }),
    );
    expect(cells.z_1!.tool).toBe('feeler');
    const found = evaluate(tram, situation(tram, given, { build: 'raises', keep_4: '1' }));
    // Behind, the gap is wider: the bed is low there and is raised.
    expect(moves(found)['back left adjuster']?.direction).toBe('clockwise');
  });
});

describe('table, drawing and words number the same places alike', () => {
  const value = (layout: Layout) => {
    const found = measure(
      [],
      { layout },
      { X_a: '15', Y_a: '20', X_b: '200', Y_b: '15', X_c: '190', Y_c: '200', X_d: '20', Y_d: '205' },
    );
    return (symbol: string): number | undefined => {
      const state = found.inputs[symbol];
      if (state?.ok) return state.value;
      const outcome = found.outcomes[symbol];
      return outcome?.ok ? outcome.value : undefined;
    };
  };

  it.each(['corners', 'front', 'back', 'three', 'four'] as const)('%s', (layout) => {
    const at = value(layout);
    const rows = tables.points.presets.two(at);
    const beside = tables.points.presets.adjusters(at);
    if ('problem' in rows || 'problem' in beside) throw new Error('no places');
    const names = adjustersOf(layout);
    const where = (x: number, y: number) => spotOf(x, y, at('W')!, at('D')!);
    for (const [i, name] of names.entries()) {
      // Where the drawing puts number i + 1.
      const drawn = where(at(`X_${i + 1}`)!, at(`Y_${i + 1}`)!);
      if (!['first', 'second', 'third', 'fourth'].includes(name)) expect(drawn).toBe(name);
      expect(where(beside[i]!.x!, beside[i]!.y!)).toBe(drawn);
      if (!drawn.includes('middle')) expect(where(rows[i]!.x!, rows[i]!.y!)).toBe(drawn);
    }
  });
});

it('says where on the bed', () => {
  expect(spotOf(10, 10, 200, 200)).toBe('front left');
  expect(spotOf(100, 190, 200, 200)).toBe('back middle');
  expect(spotOf(190, 100, 200, 200)).toBe('right middle');
  expect(spotOf(100, 100, 200, 200)).toBe('middle');
});

describe('the pitches', () => {
  it.each(Object.entries(choices.thread.options))('%s is ISO 261’s', (name, { set }) => {
    const thread = coarseThreads.find((one) => one.name === name);
    expect(set).toEqual({ P_s: thread?.P });
  });
});
