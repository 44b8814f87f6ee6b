import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { finerSetting, instruct, LEAST_FRICTION, nearestHeight } from './action';
import { formulas } from './formulas';
import { choices, inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['switchOffUnplug', 'supportGantryBed', 'motorsTheirDrivers'],
    choices,
    inputs,
    formulas,
    limits: [
      { of: 's', max: 'k', cite: commonPractice },
      { of: 'x_f', max: 'e_lim', cite: commonPractice },
    ],
    measured: ['h', 'P_h', 'p', 'z'],
    levers: {
      // Whole steps near the layer: other heights only change the pattern.
      h: {
        step: (ask) => nearestHeight(ask).by || 1,
        from: (ask) => ask.number('h') * (1 - ask.number('k_h')),
        to: (ask) => ask.number('h') * (1 + ask.number('k_h')),
      },
      m: {
        step: (ask) => (finerSetting(ask) ?? 2 * ask.number('m')) - ask.number('m'),
        from: (ask) => finerSetting(ask) ?? ask.number('m'),
        to: (ask) => finerSetting(ask) ?? ask.number('m'),
      },
      tau_f: { step: () => LEAST_FRICTION, to: (ask) => ask.number('tau_f') },
    },
    action: instruct,
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
        choices: { grid: 'full' },
        expect: { q: [0.04, 1e-12], q_m: [0.0025, 1e-12], n: [5, 1e-12], h_f: [0.2, 1e-12], e: [0, 0], s: [0, 0] },
        verdict: 'within',
        source: derived('leadMmLayer'),
      },
      {
        key: 'leadMmLayer2',
        given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.25 mm' },
        choices: { grid: 'full' },
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
        given: { P_h: '2 mm', theta_s: '1.8 deg', h: '0.125 mm', k: '5 %' },
        choices: { grid: 'full' },
        expect: { q: [0.01, 1e-12], n: [12.5, 1e-12], e: [5, 1e-9], s: [4, 1e-9], x_a: [0.5, 1e-9] },
        verdict: 'within',
        source: derived('leadMmLayer3'),
      },
      {
        key: 'beltPinionTeeth',
        given: { p: '2 mm', z: '20', theta_s: '1.8 deg', h: '0.3 mm', m: '16' },
        choices: { lift: 'belt', grid: 'full' },
        expect: { q: [0.2, 1e-12], q_m: [0.0125, 1e-12], n: [1.5, 1e-12], e: [100, 1e-9], x_a: [10, 1e-9] },
        verdict: 'beyond',
        source: derived('beltPinionTeeth'),
      },
      {
        key: 'frictionHalfHolding',
        given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.2 mm', m: '16', tau_h: '400 N·mm', tau_f: '200 N·mm ± 0' },
        expect: { delta: [30, 1e-9], m_f: [16 / 3, 1e-9], x_f: [40 / 3, 1e-9], tau_inc: [39.2, 0.02] },
        verdict: 'beyond',
        source: derived('tableMicrostepsAsin'),
      },
    ],
  },
  words,
);
