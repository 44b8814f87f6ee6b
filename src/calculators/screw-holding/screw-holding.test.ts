import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import type { Calculator } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import { STANDARD } from './choices';
import calc from './index';

const plain = calc as unknown as Calculator;
/** With what is measured, unless the test says otherwise. */
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) => {
  const two = (picked.screws ?? 'two') === 'two' && picked.drive !== 'belt';
  const read = { M_z: '2 kg ± 0.3 kg', ...(two ? { x: '150 mm ± 5 mm' } : {}) };
  return evaluate(plain, situation(plain, { ...read, ...given }, picked));
};
const said = (found: ReturnType<typeof look>): string =>
  [found.instruction!.sentence, ...found.instruction!.steps].join('\n').replaceAll('\u00a0', ' ');
const one = { screw: 'tr8x2', screws: 'one' };
const calm = { tau_h: '100 N·mm', v: '5 mm/s' };

describe('the advice', () => {
  it('supports a gantry that runs down, and names brake, load and lead that would do', () => {
    const found = look({ T_d: '2 N·mm ± 0.5 N·mm', mu: '0.15 ± 0.01' });
    expect(found.verdict.state).toBe('beyond');
    const text = said(found);
    expect(text).toMatch(/^Support the gantry before switching off: with the motors off it runs down/);
    for (const word of ['Brake', 'Counterweight', 'lead', 'blocks', 'holding current']) expect(text).toContain(word);
  });

  it('never calls it safe', () => {
    for (const T_d of ['0 N·mm', '15 N·mm ± 10 N·mm', '200 N·mm ± 5 N·mm']) {
      for (const screw of ['tr8x2', 'tr8x8', 'ball']) {
        const found = look({ T_d, ...calm }, { screw });
        expect(said(found)).not.toMatch(/\bsafe/i);
        expect(said(found)).toMatch(/support/i);
      }
    }
  });

  it('moves the carriage towards the middle: left and right mirror', () => {
    const given = { x: '120 mm', T_d: '5 N·mm ± 1 N·mm', tau_h: '50 N·mm', v: '5 mm/s' };
    const left = look(given, { side: 'left' }).instruction!;
    const right = look(given, { side: 'right' }).instruction!;
    expect(left.movements).toEqual([{ part: 'carriage', direction: 'right', amount: 0.12 }]);
    expect(right.movements).toEqual([{ part: 'carriage', direction: 'left', amount: 0.12 }]);
    expect(left.order.effect).toEqual({ x: 0 });
    expect(look({ ...given, x: '0 mm' }).instruction!.movements).toEqual([]);
  });

  it('leaves a thread that holds alone, and says where the margin comes from', () => {
    const found = look({ mu: '0.19 ± 0.01', ...calm, M_z: '1 kg ± 0.1 kg' }, one);
    expect(found.verdict.state).toBe('within');
    expect(said(found)).toMatch(/^Leave the screws as they are.*\n[^]*the thread alone/);
  });

  it('asks for the trial where it is too close, and for the weakest number', () => {
    const found = look({ ...calm });
    expect(found.verdict.state).toBe('too close');
    const said = found.instruction!.order.steps.map(({ say }) => say);
    expect(said).toContain('measureIdle');
    expect(said.some((one) => one === 'trial' || one === 'torqueTrial')).toBe(true);
  });

  it('says what may fall before a screw that bends or whirls, however sure those are', () => {
    for (const T_d of ['0 N·mm', '15 N·mm ± 10 N·mm']) {
      const found = look({ T_d, tau_h: '5000 N·mm', L: '1500 mm', v: '100 mm/s' });
      expect(found.verdict.checks.map(({ state }) => state).slice(1)).toEqual(['beyond', 'beyond']);
      const { order } = found.instruction!;
      expect(['runsDown', 'smallMargin', 'tooClose']).toContain(order.say);
      expect(order.steps[0]!.say).toBe('park');
      expect(found.instruction!.glance).toMatch(/^⚠/);
    }
  });

  it('says what may fall before a question to entries that do not fit', () => {
    for (const given of [{ P_h: '7 mm' }, { M: '5 kg', M_z: '1 kg' }, { P_h: '48 mm', mu: '0.6' }, { x: '300 mm' }]) {
      const found = look(given);
      expect(found.instruction).toBeUndefined();
      expect(found.contradiction!.sentence).toMatch(/^Support the gantry first/);
    }
  });

  it('lowers the current by what surely does, in steps of a driver, and never below what lifts', () => {
    const found = look({ mu: '0.19 ± 0.01', tau_h: '900 N·mm', L: '500 mm' }, one);
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction!.order.say).toBe('setCurrent');
    const share = found.instruction!.order.effect!.k_I as number;
    expect((share * 20) % 1).toBeCloseTo(0, 9);
    const after = look({ mu: '0.19 ± 0.01', tau_h: '900 N·mm', L: '500 mm', k_I: `${share * 100} %` }, one);
    expect(after.verdict.checks[1]!.state).toBe('within');
    const heavy = { mu: '0.19 ± 0.01', tau_h: '900 N·mm', L: '500 mm', M_z: '60 kg' };
    expect(look(heavy, { ...one, ends: 'free' }).instruction!.order.say).toBe('stiffen');
  });

  it('lowers the speed of a screw that would whirl, to one that surely does not', () => {
    const slender = { mu: '0.19 ± 0.01', tau_h: '50 N·mm', M_z: '0.5 kg ± 0', L: '1500 mm' };
    const found = look({ ...slender, v: '40 mm/s', k_I: '5 %' }, one);
    const { order } = found.instruction!;
    expect(order.say).toBe('slower');
    const to = order.effect!.v as number;
    expect(((to * 1e4) % 1) + 1).toBeCloseTo(1, 6);
    expect(look({ ...slender, v: `${to * 1e3} mm/s`, k_I: '5 %' }, one).verdict.checks[2]!.state).toBe('within');
  });
});

describe('the trial', () => {
  const held = { ...calm, M_z: '2 kg ± 0', mu_c: '0', T_b: '0 N·mm', m_lim: '1.5' } as const;
  const steps = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>>) =>
    look({ ...held, ...given }, picked).instruction!.order.steps;
  const steep = { screw: 'tr8x8', screws: 'one' };

  it('pulls by more than the load it stands for, since friction grows with the pull', () => {
    const [first] = steps({ mu: '0.15 ± 0', T_d: '300 N·mm ± 0' }, steep);
    // m_p = 0.15 / 0.3514: half the load over 1 less that is 17.1 N, where half the load alone is 9.8 N.
    expect(first).toMatchObject({ say: 'trial', args: { pull: { si: 18 } } });
  });

  it('is another one where friction that grows with the load may hold any pull', () => {
    const said = steps({ mu: '0.19 ± 0.01' }, one).map(({ say }) => say);
    expect(said.slice(0, 2)).toEqual(['noPullTells', 'torqueTrial']);
  });

  it('is another one where the pull is more than frame or scale should bear', () => {
    expect(steps({ mu: '0.32 ± 0', T_d: '300 N·mm ± 0', F_x: '300 N' }, steep)[0]!.say).toBe('trial');
    expect(steps({ mu: '0.32 ± 0', T_d: '300 N·mm ± 0', F_x: '50 N' }, steep)[0]!.say).toBe('noPullTells');
  });
});

describe('the sizes', () => {
  it('have whole numbers of starts and a core inside the pitch diameter inside the crest', () => {
    for (const screw of STANDARD) {
      const { outcomes, inputs } = look({}, { screw });
      const value = (name: string): number => {
        const outcome = outcomes[name];
        return outcome?.ok ? outcome.value : NaN;
      };
      expect(value('n_s'), screw).toBeCloseTo(Math.round(value('n_s')), 9);
      const crest = inputs.d!;
      expect(crest.ok && crest.value > value('d_2') && value('d_2') > value('d_3'), screw).toBe(true);
    }
  });

  it('reproduce the margins worked out apart: friction that just locks', () => {
    // The project's reference list: ISO 2904 diameters, tan λ · cos 15°.
    const wanted = { 'tr8x1.5': 0.0636, tr8x2: 0.0878, tr8x4: 0.1757, tr8x8: 0.3514, tr10x2: 0.0683 };
    for (const [screw, friction] of Object.entries(wanted)) {
      const outcome = look({}, { screw }).outcomes.mu_l;
      expect(outcome?.ok && outcome.value, screw).toBeCloseTo(friction, 4);
    }
  });
});

describe('Euler and Johnson', () => {
  it('meet without a step, and the parabola lies below Euler’s curve', () => {
    const stress = (L: number): number => {
      const given = { d_k: '5.5 mm ± 0', R_e: '400 MPa ± 0', E: '206 GPa ± 0', L: `${L} mm ± 0` };
      const outcome = look(given, { screw: 'own', screws: 'one' }).outcomes.sigma;
      return outcome?.ok ? outcome.value / 1e6 : NaN;
    };
    const meeting = (Math.sqrt((2 * Math.PI ** 2 * 206e3) / 400) * 5.5) / 4;
    expect(Math.abs(stress(meeting - 0.01) - stress(meeting + 0.01))).toBeLessThan(0.1);
    for (const L of [60, 90, 120]) {
      expect(stress(L)).toBeLessThan((Math.PI ** 2 * 206e3) / ((4 * L) / 5.5) ** 2);
      expect(stress(L)).toBeLessThan(400);
    }
  });
});
