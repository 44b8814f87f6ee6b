import { describe, expect, it } from 'vitest';
import calc from '../../src/calculators/two-z-screws';
import { evaluate } from '../../src/engine/evaluate';
import { situation } from '../support/calculators';

const given = { S_m: '400 ± 0', S: '400 ± 0', P_h: '8', z: '20' };
const stepsFor = (dh: string) => evaluate(calc, situation(calc, { ...given, dh })).instruction?.steps.join(' ') ?? '';

describe('a count that is not near a whole number of teeth', () => {
  // 0.15 mm is 0.375 of a 0.4 mm tooth, 0.65 mm is 1.625 teeth, 0.75 mm is 1.875.
  it.each(['0.15', '-0.15', '0.65', '-0.65'])(
    '%s mm: another cause is named, also where no whole tooth is out',
    (dh) => {
      expect(stepsFor(`${dh} ± 0`)).toContain('slipped grub screw');
    },
  );

  it.each(['0.75', '-0.75'])('%s mm: a tooth count explains it', (dh) => {
    expect(stepsFor(`${dh} ± 0`)).not.toContain('slipped grub screw');
  });
});

it('warns of heat before a gauge goes under the nozzle', () => {
  expect(calc.cautions.join(' ')).toMatch(/nozzle and bed cool/);
});

describe('two motors', () => {
  const run = (dh: string) => {
    const motors = { S_m: '400 ± 0', S: '400 ± 0', P_h: '8', theta_s: '1.8 deg', dh };
    return evaluate(calc, situation(calc, motors, { drive: 'motors' }));
  };

  // A caliper's 0.035 mm against steps of 0.04 mm never settles the count; 0.75 mm / 8 mm × 360° = 33.75° does not need it: 35° in steps of 5°.
  it('turns by the angle at the coupling, also where the steps cannot be counted', () => {
    const { instruction, outcomes } = run('0.75 ± 0.03');
    expect(outcomes.n_w?.ok).toBe(false);
    expect(instruction?.movements[0]).toMatchObject({ part: 'right screw', direction: 'anticlockwise' });
    expect(((instruction?.movements[0]?.amount ?? 0) * 180) / Math.PI).toBeCloseTo(35, 9);
    expect(instruction?.steps.join(' ')).toContain('coupling');
  });

  it('says whole turns where there are some', () => {
    // 20 mm of an 8 mm lead are two and a half turns.
    expect(run('20 ± 0.03').instruction?.sentence).toContain('2 turns and 180°');
  });
});

describe('a belt between two teeth', () => {
  // 0.6 mm is a tooth and a half: no tool makes a whole number of it.
  it('is turned at the grub screw, and another cause is named', () => {
    const { instruction } = evaluate(calc, situation(calc, { ...given, dh: '0.6 ± 0.03' }));
    expect(instruction?.movements[0]).toMatchObject({ part: 'right screw', direction: 'anticlockwise' });
    // 0.6 / 8 × 360° = 27°: 25° in steps of 5°.
    expect(((instruction?.movements[0]?.amount ?? 0) * 180) / Math.PI).toBeCloseTo(25, 9);
    expect(instruction?.steps.join(' ')).toContain('slipped grub screw');
  });

  it('more teeth than the pulley has are no slipped tooth', () => {
    expect(stepsFor('20 ± 0.03')).toContain('no slipped tooth');
  });
});

describe('the slope of the gantry', () => {
  const level = (i_g: string, i_f: string, picked: Record<string, string> = { by: 'level' }) =>
    evaluate(calc, situation(calc, { i_g, i_f, S: '400 ± 0', P_h: '8', z: '20' }, picked));

  it('says the same as two heights that rise by it', () => {
    // 2.5 mm/m over 400 mm is 1 mm.
    const [slope, heights] = [level('2.5 ± 0', '0 ± 0'), evaluate(calc, situation(calc, { ...given, dh: '1 ± 0' }))];
    expect(slope.instruction?.movements).toEqual(heights.instruction?.movements);
    expect(slope.instruction?.sentence).toBe(heights.instruction?.sentence);
  });

  it('mirrors with its sign, and a frame that leans alike is no fault', () => {
    expect(level('2 ± 0', '0 ± 0').instruction?.order.args.high).toBe('right');
    expect(level('-2 ± 0', '0 ± 0').instruction?.order.args.high).toBe('left');
    expect(level('7 ± 0', '7 ± 0').verdict.state).toBe('within');
    expect(level('7 ± 0', '9 ± 0').instruction?.order.args.high).toBe('left');
  });

  it('what was kept before there was this choice is read as two heights', () => {
    for (const picked of [{}, { drive: 'belt', hand: 'right' }]) {
      const old = evaluate(calc, situation(calc, { ...given, dh: '0.75 ± 0' }, picked));
      expect(old.choices.by).toBe('heights');
      expect(old.outcomes.n?.ok && old.outcomes.n.value).toBeCloseTo(1.875, 12);
      expect(old.inputs.i_g).toBeUndefined();
    }
  });

  it('waits for the frame’s slope too', () => {
    const half = evaluate(calc, situation(calc, { i_g: '2 ± 0', S: '400' }, { by: 'level' }));
    expect(half.verdict.state).toBe('none');
  });
});
