import { describe, expect, it } from 'vitest';
import { evaluate, explain } from '../../src/engine/evaluate';
import type { Amount } from '../../src/engine/order';
import calc from '../../src/calculators/wheel-preload/index';
import { situation } from '../support/calculators';

type Given = Readonly<Record<string, string>>;
const run = (given: Given, choices: Given = {}) => evaluate(calc, situation(calc, given, choices));

const loose = { F_slip: '0.5 N ± 0.1 N', theta_0: '80 deg ± 1 deg' };
const tight = { F_slip: '40 N ± 1 N', theta_0: '80 deg ± 1 deg' };
const sides = ['clockwise', 'anticlockwise'] as const;
const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

describe('the bush is turned', () => {
  it.each(sides)('further the way it stands when the wheel is loose: %s', (side) => {
    const { instruction, verdict } = run(loose, { side });
    expect(verdict.state).toBe('beyond');
    expect(instruction?.movements[0]?.direction).toBe(side);
    expect(instruction?.sentence).toContain('towards the rail');
  });

  it.each(sides)('back when the wheel is tight: %s', (side) => {
    const { instruction, verdict } = run(tight, { side });
    expect(verdict.state).toBe('beyond');
    expect(instruction?.movements[0]?.direction).toBe(opposite[side]);
    expect(instruction?.sentence).toContain('away from the rail');
  });

  it('by what brings it within, as a spanner sets it, in stages no larger than one turn between tests', () => {
    const found = run({ ...loose, c_w: '60 N/mm ± 6 N/mm', mu: '0.25 ± 0.01' });
    const turned = ((found.instruction?.movements[0]?.amount ?? 0) * 180) / Math.PI;
    expect(turned).toBeGreaterThan(5);
    expect(turned).toBeCloseTo(Math.round(turned), 9);
    const stage = found.instruction?.order.steps.find(({ say }) => say === 'turnTo')?.args.most as Amount | undefined;
    expect(((stage?.si ?? 0) * 180) / Math.PI).toBeCloseTo(5, 9);
  });
});

describe('the bush is left alone', () => {
  it.each([
    ['loose at the end of the throw', { ...loose, theta_0: '170 deg' }, {}, 'end of its throw'],
    ['tight, fully retracted', { ...tight, theta_0: '8 deg' }, {}, 'fully retracted'],
    ['no room on a line', { F_slip: '5 N', M: '6 kg' }, {}, 'Change the carriage'],
    ['an edge', { F_slip: '5 N' }, { contact: 'edge' }, 'Let a band wear in'],
    ['an edge, spinning freely', { F_slip: '0 N ± 0.1 N' }, { contact: 'edge' }, 'then judge as a line'],
    ['within', { F_slip: '5 N ± 0.2 N' }, {}, 'hold and do not mark'],
    ['too close', { F_slip: '1.5 N' }, {}, 'too close to call'],
    ['only the turn known', { theta_t: '85 deg', theta_0: '88 deg' }, { by: 'bush' }, 'too close to call'],
  ] as [string, Given, Given, string][])('%s', (_, given, choices, words) => {
    const { instruction } = run(given, choices);
    expect(instruction?.sentence).toContain(words);
    expect(instruction?.movements ?? []).toEqual([]);
  });

  it('near fully retracted a loose wheel is still turned in, with a word on the gain', () => {
    const { instruction } = run({ ...loose, theta_0: '5 deg' });
    expect(instruction?.movements).toHaveLength(1);
    expect(instruction?.steps.join(' ')).toContain('hardly moves the wheel');
  });
});

it('what to settle first goes by the end that is in doubt: the band where it may mark, friction alone where it may slip', () => {
  const told = (F_slip: string) => run({ F_slip }).instruction?.order.steps.map(({ say }) => say);
  const [slips, marks] = [run({ F_slip: '1.5 N' }), run({ F_slip: '12.5 N ± 0.5 N' })];
  expect([slips.verdict.state, marks.verdict.state]).toEqual(['too close', 'too close']);
  expect(told('1.5 N')).not.toContain('measureBand');
  expect(told('12.5 N ± 0.5 N')).toContain('measureBand');
});

it('a wheel that spins freely has a verdict, and a slip force is asked for where there is none', () => {
  const free = run({ F_slip: '0 N ± 0.1 N', theta_0: '60 deg' });
  expect(free.verdict.state).toBe('beyond');
  expect(free.instruction?.sentence).toContain('too little');
  const blank = run({});
  expect(blank.instruction).toBeUndefined();
  expect(blank.cannot).toContain('slip force');
});

it.each(sides)(
  'on an edge a wheel that spins freely is turned in until it turns, the way its bush stands: %s',
  (side) => {
    const { instruction } = run({ F_slip: '0 N ± 0.1 N', r_e: '8 mm' }, { contact: 'edge', side });
    expect(instruction?.steps[0]).toContain(`If it spins freely, turn the bush ${side}, seen from the bolt head`);
  },
);

it('an over-tight wheel without a moment to hold is eased, not aimed at nothing', () => {
  const found = run({ ...tight, d: '0 mm ± 0', h: '0 mm ± 0' });
  expect(found.verdict.state).toBe('beyond');
  expect(found.instruction?.sentence).toContain('away from the rail');
  expect(found.outcomes.N_aim).toMatchObject({ ok: true });
  expect(found.outcomes.N_aim?.ok && found.outcomes.N_aim.low).toBeGreaterThan(1);
});

it('says in which plane the moment must lie', () => {
  expect(calc.inputs.d?.hint).toContain('in the plane of the wheels');
  expect(calc.beware.join(' ')).toMatch(/level rail .*held across the rail/);
});

it('names at most three inputs where the turn cannot be worked out, the bush and what weighs most first', () => {
  const { outcomes } = run({ F_slip: '0 N ± 0.1 N', theta_0: '60 deg', c_w: '1 N/mm ± 0.5 N/mm' });
  const turn = outcomes.dtheta;
  if (turn?.ok !== false || turn.failure.kind !== 'domain') throw new Error('the turn has a value');
  expect(turn.failure.symbols.length).toBeGreaterThan(10);
  expect(new Set(turn.failure.symbols).size).toBe(turn.failure.symbols.length);
  const gap = outcomes.du;
  expect(gap?.ok && gap.budget[0]?.symbol).toBe(turn.failure.symbols[2]);
  expect(explain(calc, turn.failure)).toMatch(
    /Look at: present bush angle; eccentricity of the bush; [^;]+; and \d+ more\.$/,
  );
});

it('with the weight left on, the relieved wheel’s reading is put right', () => {
  const given = { F_slip: '2 N', M: '0.5 kg ± 0', d: '40 mm ± 0', s: '60 mm ± 0' };
  const value = (symbol: string, by: string) => {
    const outcome = run({ ...given, theta_0: '90 deg', theta: '90 deg' }, { by }).outcomes[symbol];
    return outcome?.ok ? outcome.value : NaN;
  };
  expect(value('N', 'hanging') - value('N', 'slip')).toBeCloseTo((0.5 * 9.80665 * 0.04) / 0.06, 12);
  // Not turned at all, the slip force to expect is the one read, either way.
  expect(value('F_1', 'hanging')).toBeCloseTo(2, 12);
  expect(value('F_1', 'slip')).toBeCloseTo(2, 12);
});
