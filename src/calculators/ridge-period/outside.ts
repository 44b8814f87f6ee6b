import { evaluate, unit, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const direct = { by: 'direct' } as const;
const along = { by: 'direct', way: 'along' } as const;
const lifted = { by: 'direct', lift: 'belt' } as const;
const tables = 'ISO 5296, pitch diameter p z / π: 12.732 mm for 20 teeth of 2 mm (from memory)';

/** Circumference of that pitch diameter, mm. */
const pulley = Math.PI * 12.732;

/** A length, area or time worked out with units by mathjs. */
const by = (expression: string, wanted: string): number => (evaluate(expression) as Unit).toNumber(wanted);
const fed = 'pi * 11 mm * pi * (1.75 mm) ^ 2 / 4';

const checks: readonly OutsideProof[] = [
  {
    source: 'The inch is 25.4 mm exactly (1959): ten spaces over one inch on a wall that shrank one part in 128',
    given: { L: '1 in', N: '10', x: '0', s: '0.78125 %' },
    expect: { P_m: [2.54, 1e-12], P: [2.56, 1e-9] },
  },
  {
    source: 'The inch is 25.4 mm exactly (1959): a period of a tenth of an inch',
    given: { P_w: '0.1 in', s: '0' },
    choices: direct,
    expect: { P_m: [2.54, 1e-12], P: [2.54, 1e-12] },
  },
  {
    source: 'ISO 2902, designation Tr 8×8(P2): lead 8 mm, four starts of 2 mm (from memory); ridges at 8.4 mm',
    given: { P_w: '8.4 mm', s: '0', P_h: '8 mm', n_s: '4', i_g: '4' },
    choices: direct,
    expect: {
      p_lead: [8, 1e-12],
      p_thread: [2, 1e-12],
      p_motor: [2, 1e-12],
      e_lead: [5, 1e-9],
      e_thread: [320, 1e-9],
      e_motor: [320, 1e-9],
    },
  },
  {
    source: 'Trade fact: 200 full steps a turn on a lead of 8 mm are 0.04 mm each; a layer of 0.25 mm is 6 1/4 of them',
    given: { P_w: '1.05 mm', s: '0', P_h: '8 mm', h: '0.25 mm' },
    choices: direct,
    expect: {
      q: [0.04, 1e-12],
      n: [6.25, 1e-9],
      n_w: [6, 0],
      k_odd: [1, 1e-9],
      e_odd: [5, 1e-6],
      p_min: [0.5, 1e-12],
    },
  },
  {
    source: `Z by belt: ${tables}; 200 steps a turn`,
    given: { P_w: '42 mm', s: '0', p: '2 mm', z: '20', i_g: '4' },
    choices: lifted,
    expect: {
      p_tooth: [2, 1e-12],
      p_pulley: [() => pulley, 0.002],
      p_motor: [() => pulley / 4, 0.001],
      q: [() => pulley / 800, 1e-5],
      e_tooth: [2000, 1e-6],
      e_pulley: [() => (42 / pulley - 1) * 100, 0.05],
      e_motor: [() => (168 / pulley - 1) * 100, 0.05],
    },
  },
  {
    source: `X or Y: ${tables}; 200 steps a turn, 0.2 mm each`,
    given: { P_w: '42 mm', s: '0', p_b: '2 mm', z_b: '20' },
    choices: along,
    expect: {
      p_tooth: [2, 1e-12],
      p_pulley: [() => pulley, 0.002],
      p_step: [0.2, 1e-12],
      p_cycle: [0.8, 1e-12],
      e_tooth: [2000, 1e-6],
      e_pulley: [() => (42 / pulley - 1) * 100, 0.05],
      e_step: [() => (42 / 0.2 - 1) * 100, 1e-6],
      e_cycle: [() => (42 / 0.8 - 1) * 100, 1e-6],
    },
  },
  // A toothed idler of the same belt has the pulley's pitch circle: its rim lies 0.254 mm inside the cords.
  ...(['along', 'lifted'] as const).map((where): OutsideProof => ({
    source: `Idler with teeth, ${where === 'along' ? 'X or Y' : 'Z'}: ${tables}, rim 0.254 mm inside the cords`,
    given: { P_w: '42 mm', s: '0', [where === 'along' ? 'd_i' : 'd_z']: '12.224 mm', a: '0.254 mm' },
    choices: where === 'along' ? along : lifted,
    expect: { p_idler: [() => pulley, 0.001], e_idler: [() => (42 / pulley - 1) * 100, 0.01] },
  })),
  {
    source: 'Archimedes, Measurement of a Circle: 22/7 turns of a diameter of 21 mm make 66 mm, to 0.04 %',
    given: { P_w: '69.3 mm', s: '0', r_w: '10.5 mm' },
    choices: direct,
    expect: { p_wheel: [66, 0.04], e_wheel: [5, 0.06] },
  },
  {
    source: 'mathjs units: a gear of 11 mm and a filament of 1.75 mm, laid as a line of 0.5 × 0.2 mm',
    given: { P_w: '872.6 mm', s: '0', d_g: '11 mm', d_f: '1.75 mm', w: '0.5 mm', h: '0.2 mm', k_A: '1' },
    choices: along,
    expect: {
      A_f: [() => by('pi * (1.75 mm) ^ 2 / 4', 'mm^2'), 1e-9],
      V_g: [() => by(fed, 'mm^3'), 1e-9],
      p_gear: [() => by(`${fed} / (0.5 mm * 0.2 mm)`, 'mm'), 1e-6],
      e_gear: [() => (872.6 / by(`${fed} / (0.5 mm * 0.2 mm)`, 'mm') - 1) * 100, 1e-6],
    },
  },
  {
    source: 'mathjs units: the same gear, in layers of 831 mm of line, 0.2 mm each',
    given: { P_w: '0.21 mm', s: '0', d_g: '11 mm', d_f: '1.75 mm', w: '0.5 mm', h: '0.2 mm', k_A: '1', l_L: '831 mm' },
    choices: direct,
    expect: {
      p_gear: [() => by(`${fed} / (0.5 mm * 0.2 mm) / 831 mm * 0.2 mm`, 'mm'), 1e-9],
      e_gear: [() => (0.21 / by(`${fed} / (0.5 mm * 831 mm)`, 'mm') - 1) * 100, 1e-6],
    },
  },
  {
    source: 'mathjs units: a cycle of 1 min against layers of 12 s; one day in seconds',
    given: { P_w: '1.05 mm', s: '0', h: '0.2 mm', t_c: '1 min', t_L: '12 s' },
    choices: direct,
    expect: {
      p_heat: [() => (0.2 * unit('1 minute').toNumber('s')) / 12, 1e-9],
      e_heat: [5, 1e-6],
      p_day: [() => (0.2 * unit('1 day').toNumber('s')) / 12, 1e-6],
      e_day: [() => (1.05 / 1440 - 1) * 100, 1e-6],
    },
  },
  {
    source: 'mathjs units: 1 min at 3000 mm/min is 3 m of line',
    given: { P_w: '900 mm', s: '0', v: '3000 mm/min', t_c: '1 min' },
    choices: along,
    expect: {
      p_heat: [() => unit('3000 mm/minute').toNumber('mm/s') * unit('1 minute').toNumber('s'), 1e-9],
      e_heat: [-70, 1e-9],
    },
  },
  {
    source: 'The inch is 25.4 mm exactly (1959): ten spaces over it, read 0.4 mm short between the jaws',
    given: { L: '25 mm', N: '10', x: '0.4 mm', s: '0' },
    expect: { P_m: [2.54, 1e-12] },
  },
  {
    source:
      'Trade fact: 200 full steps a turn on a lead of 8 mm, geared down two to one, are 0.02 mm; 0.275 mm are 13 3/4 of them, a quarter short of 14: one step in four layers',
    given: { P_w: '1.1 mm', s: '0', P_h: '8 mm', h: '0.275 mm', i_g: '2' },
    choices: direct,
    expect: { q: [0.02, 1e-12], n: [13.75, 1e-9], n_w: [14, 0], e_odd: [0, 1e-6] },
  },
];
export default checks;
