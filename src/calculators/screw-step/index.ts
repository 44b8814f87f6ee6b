import { placed } from '../../engine/shared-places';
import { angle, count, length, ratio, torque } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { calculator, choice, formula, input, cite, derived } from '../../engine/calculator';
import { instruct } from './action';
import words from './words/en';

const lead = cite('Machinery’s Handbook', 'powerScrewsLead', true);
const pitchOfTurn = cite('ISO 5296 and ISO 13050, synchronous belt drives', 'pitchGeometryTurn', true);
const steppers = cite('IEC 60034-20-1, stepping motors', 'stepAngleSubdivision', true);
const microstepPaper = cite('Maker’s white paper on microstepping', 'eqTable');
const sineTorque = derived('torqueHoldingTorque');
const wholeSteps = derived('layerEitherWhole');

export default calculator(
  {
    cautions: ['switchOffUnplug', 'supportGantryBed', 'motorsTheirDrivers'],
    choices: {
      lift: choice({ screw: {}, belt: {} }, 'screw', {
        from: 'z.lift',
      }),
      grid: choice({ full: {}, micro: {} }, 'full', {
        from: 'z.held-to',
      }),
    },
    inputs: {
      h: placed('print.layer', { range: [0.01, 2] }),
      P_h: placed('z.lead', {
        range: [0.5, 50],
        when: { lift: 'screw' },
      }),
      p: placed('z.belt-pitch', {
        range: [1, 20],
        when: { lift: 'belt' },
      }),
      z: placed('z.pinion-teeth', {
        range: [8, 200],
        when: { lift: 'belt' },
      }),
      theta_s: placed('z.step-angle', { range: [0.1, 15] }),
      i_g: placed('z.gear-ratio', {
        seldom: true,
        range: [0.05, 200],
      }),
      m: placed('z.microsteps', {
        range: [1, 256],
        basis: commonPractice,
      }),
      tau_h: placed('z.holding-torque', {
        seldom: true,
        range: [5, 20000],
        basis: commonPractice,
      }),
      tau_f: input(torque.N_mm, {
        seldom: true,
        typical: 20,
        spread: 5,
        range: [0, 5000],
        basis: commonPractice,
        from: 'z.friction-torque',
      }),
      a: input(ratio.percent, {
        seldom: true,
        typical: 5,
        range: [0, 50],
        basis: cite('Usual line of a stepping motor’s data sheet', 'cumulative', true),
      }),
      k: input(ratio.percent, {
        seldom: true,
        typical: 5,
        range: [0.1, 100],
        basis: commonPractice,
      }),
      k_h: input(ratio.percent, {
        seldom: true,
        typical: 25,
        range: [1, 100],
        basis: commonPractice,
      }),
    },
    formulas: [
      formula('q = P_h * theta_s / rev / i_g', length.mm, lead, { lift: 'screw' }),
      formula('q = p * z * theta_s / rev / i_g', length.mm, pitchOfTurn, { lift: 'belt' }),
      formula('q_m = q / m', length.mm, steppers),
      formula('g = q', length.mm, derived('positionHeldFull'), {
        grid: 'full',
      }),
      formula('g = q_m', length.mm, derived('positionHeldMicrosteps'), {
        grid: 'micro',
      }),
      formula('n = h / g', ratio.one, derived('heightOverHeight')),
      formula('n_f = floor(n)', count.one, wholeSteps),
      formula('n_c = ceil(n)', count.one, wholeSteps),
      formula('h_f = n_f * g', length.mm, wholeSteps),
      formula('h_c = n_c * g', length.mm, wholeSteps),
      formula('e = max(h - h_f, h_c - h)', length.um, derived('betweenWholeSteps')),
      formula('s = e / h', ratio.percent, derived('errorOverLayer')),
      formula('r = g / 2', length.um, derived('roundingNearestStep')),
      formula('tau_inc = tau_h * sin(right_angle / m)', torque.N_mm, microstepPaper),
      formula('delta = asin(tau_f / tau_h)', angle.deg, sineTorque),
      formula('m_f = m * delta / right_angle', ratio.one, sineTorque),
      formula('x_f = q * delta / right_angle', length.um, sineTorque),
      formula('x_a = a * q', length.um, derived('shareFullStep')),
      formula('e_lim = k * h', length.um, commonPractice),
    ],
    limits: [
      { of: 's', max: 'k', cite: commonPractice },
      { of: 'x_f', max: 'e_lim', cite: commonPractice },
    ],
    action: (ctx) => instruct(ctx, ctx.choice('grid')),
    beware: [
      'torqueMicrostepLag',
      'afterFirstMove',
      'wholeStepsMake',
      'sineTorqueLeaves',
      'firstLayerAnother',
      'ridgesOncePer',
    ],
    examples: [
      {
        key: 'leadMmLayer',
        given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.2 mm', m: '16' },
        expect: { q: [0.04, 1e-12], q_m: [0.0025, 1e-12], n: [5, 1e-12], h_f: [0.2, 1e-12], e: [0, 0], s: [0, 0] },
        verdict: 'within',
        source: derived('leadMmLayer'),
      },
      {
        key: 'leadMmLayer2',
        given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.25 mm' },
        expect: {
          n: [6.25, 1e-12],
          n_f: [6, 0],
          n_c: [7, 0],
          h_f: [0.24, 1e-12],
          h_c: [0.28, 1e-12],
          e: [30, 1e-9],
          s: [12, 1e-9],
        },
        verdict: 'beyond',
        source: derived('leadMmLayer2'),
      },
      {
        key: 'sameHeldSixteenths',
        given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.25 mm', m: '16' },
        choices: { grid: 'micro' },
        expect: { g: [0.0025, 1e-12], n: [100, 1e-10], e: [0, 0], r: [1.25, 1e-9] },
        verdict: 'within',
        source: derived('sameHeldSixteenths'),
      },
      {
        key: 'leadMmLayer3',
        given: { P_h: '2 mm', theta_s: '1.8 deg', h: '0.125 mm' },
        expect: { q: [0.01, 1e-12], n: [12.5, 1e-12], e: [5, 1e-9], s: [4, 1e-9], x_a: [0.5, 1e-9] },
        verdict: 'within',
        source: derived('leadMmLayer3'),
      },
      {
        key: 'beltPinionTeeth',
        given: { p: '2 mm', z: '20', theta_s: '1.8 deg', h: '0.3 mm', m: '16' },
        choices: { lift: 'belt' },
        expect: { q: [0.2, 1e-12], q_m: [0.0125, 1e-12], n: [1.5, 1e-12], e: [100, 1e-9], x_a: [10, 1e-9] },
        verdict: 'beyond',
        source: derived('beltPinionTeeth'),
      },
      {
        key: 'frictionHalfHolding',
        given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.2 mm', m: '16', tau_h: '400 N·mm', tau_f: '200 N·mm ± 0' },
        expect: { delta: [30, 1e-9], m_f: [16 / 3, 1e-9], x_f: [40 / 3, 1e-9], tau_inc: [39.2, 0.02] },
        verdict: 'beyond',
        source: cite('Maker’s white paper on microstepping', 'tableMicrostepsAsin'),
      },
    ],
  },
  words,
);
