import { describe, expect, it } from 'vitest';
import { situation } from '../../../test/support/calculators';
import type { Calculator } from '../../engine/calculator';
import { evaluate } from '../../engine/evaluate';
import { STANDARD } from './choices';
import calc from './index';

const plain = calc as unknown as Calculator;
const look = (given: Readonly<Record<string, string>>, picked: Readonly<Record<string, string>> = {}) =>
  evaluate(plain, situation(plain, given, picked));
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
    for (const word of ['Brake', 'Counterweight', 'Lower lead', 'blocks', 'holding current'])
      expect(text).toContain(word);
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
    const given = { x: '120 mm', T_d: '5 N·mm ± 1 N·mm' };
    const left = look(given, { side: 'left' }).instruction!;
    const right = look(given, { side: 'right' }).instruction!;
    expect(left.movements).toEqual([{ part: 'carriage', direction: 'right', amount: 0.12 }]);
    expect(right.movements).toEqual([{ part: 'carriage', direction: 'left', amount: 0.12 }]);
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
    expect(said(found)).toMatch(/Trial: .* N on a luggage scale/);
    expect(said(found)).toContain('weakest number');
  });

  it('lowers the current where a stalled motor could bend the screw', () => {
    const found = look({ mu: '0.19 ± 0.01', tau_h: '900 N·mm', L: '500 mm' }, { ...one, ends: 'free' });
    expect(found.verdict.state).toBe('beyond');
    expect(said(found)).toMatch(/lower the motor’s current/);
    expect(said(found)).toContain('by Euler');
  });

  it('lowers the speed of a screw that would whirl', () => {
    const found = look({ mu: '0.19 ± 0.01', tau_h: '5 N·mm', L: '1500 mm', v: '40 mm/s' }, one);
    expect(found.verdict.state).toBe('beyond');
    expect(said(found)).toMatch(/^Lower the fastest Z move/);
    expect(found.instruction!.movements[0]!.amount).toBeGreaterThan(0);
  });

  it('does not go on with entries that do not fit together', () => {
    expect(look({ P_h: '7 mm' }).instruction).toMatchObject({ measureAgain: true });
    expect(look({ M: '5 kg', M_z: '1 kg' }).instruction).toMatchObject({ measureAgain: true });
    expect(look({ P_h: '48 mm', mu: '0.6' }, { screw: 'tr8x8' }).instruction).toMatchObject({ measureAgain: true });
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
