import { angle, count, length, ratio, torque } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator, choice, formula, input } from '../../engine/calculator';
import { instruct } from './action';

const lead = cite('Machinery’s Handbook', 'power screws: lead = pitch × starts', true);
const pitchOfTurn = cite(
  'ISO 5296 and ISO 13050, synchronous belt drives',
  'pitch geometry: one turn moves pitch × teeth',
  true,
);
const steppers = cite('IEC 60034-20-1, stepping motors', 'step angle and its subdivision', true);
const microstepPaper = cite('Maker’s white paper on microstepping', 'eq. 1 and Table 1');
const sineTorque = derived('torque = holding torque × sine of the electrical lag; a full step is 90° electrical');
const wholeSteps = derived('a layer is either the whole steps below or the whole steps above its height');

export default calculator({
  cautions: [
    'Switch off and unplug before a hand goes near the screw or belt of the Z drive; a homing move pinches.',
    'Support the gantry or bed before the drive is freed or uncoupled: it can drop.',
    'Motors and their drivers run hot. Never pull a motor’s plug with the power on: it can destroy the driver.',
  ],
  choices: {
    lift: choice('Z is driven by', { screw: { label: 'a screw' }, belt: { label: 'a belt and pinion' } }, 'screw', {
      from: 'z.lift',
    }),
    grid: choice('Position is held to', { full: { label: 'full steps' }, micro: { label: 'microsteps' } }, 'full', {
      from: 'z.held-to',
      hint: 'Full steps are the worst case, and where a motor settles when its current is cut between moves. A driver that keeps the current on holds microsteps, as far as friction allows.',
    }),
  },
  inputs: {
    h: input('Layer height', length.mm, { typical: 0.2, range: [0.01, 2], from: 'print.layer' }),
    P_h: input('Screw lead', length.mm, {
      typical: 8,
      range: [0.5, 50],
      from: 'z.lead',
      hint: 'Lead = pitch × starts, as marked: the pattern follows from the nominal value, not from a measured one.',
      when: { lift: 'screw' },
    }),
    p: input('Pitch of the Z belt', length.mm, {
      typical: 2,
      range: [1, 20],
      from: 'z.belt-pitch',
      when: { lift: 'belt' },
    }),
    z: input('Teeth of the Z pinion', count.one, {
      typical: 20,
      range: [8, 200],
      from: 'z.pinion-teeth',
      when: { lift: 'belt' },
    }),
    theta_s: input('Full step of the motors', angle.deg, { typical: 1.8, range: [0.1, 15], from: 'z.step-angle' }),
    i_g: input('Gear ratio, motor turns per turn of the drive', ratio.one, {
      seldom: true,
      typical: 1,
      range: [0.05, 200],
      from: 'z.gear-ratio',
      hint: '1 where the motor sits on the screw. A small wheel on the motor and a large one on the screw give more than 1.',
    }),
    m: input('Microsteps per full step', count.one, {
      typical: 16,
      range: [1, 256],
      basis: commonPractice,
      from: 'z.microsteps',
    }),
    tau_h: input('Holding torque of the motor', torque.N_mm, {
      seldom: true,
      typical: 400,
      range: [5, 20000],
      basis: commonPractice,
      from: 'z.holding-torque',
      hint: 'From its data sheet; less in proportion where the driver gives it less than the rated current.',
    }),
    tau_f: input('Friction torque at the motor', torque.N_mm, {
      seldom: true,
      typical: 20,
      spread: 5,
      range: [0, 5000],
      basis: commonPractice,
      from: 'z.friction-torque',
      hint: 'Motor off and uncoupled: a thread wound round the screw’s pulley, pulled with a scale until it turns. Force × radius, divided by the gear ratio.',
    }),
    a: input('Step error of the motor, share of a full step', ratio.percent, {
      seldom: true,
      typical: 5,
      range: [0, 50],
      basis: cite('Usual line of a stepping motor’s data sheet', '±3 % to ±5 %, not cumulative', true),
    }),
    k: input('Share of the layer allowed', ratio.percent, {
      seldom: true,
      typical: 5,
      range: [0.1, 100],
      basis: commonPractice,
    }),
    k_h: input('Most the layer height may be changed by, share of it', ratio.percent, {
      seldom: true,
      typical: 25,
      range: [1, 100],
      basis: commonPractice,
      hint: 'A whole step farther away than this is not offered: the steps are then too coarse for the layer.',
    }),
  },
  formulas: [
    formula('q = P_h * theta_s / rev / i_g', 'Travel of one full step', length.mm, lead, { lift: 'screw' }),
    formula('q = p * z * theta_s / rev / i_g', 'Travel of one full step', length.mm, pitchOfTurn, { lift: 'belt' }),
    formula('q_m = q / m', 'Travel of one microstep', length.mm, steppers),
    formula('g = q', 'Step that heights are rounded to', length.mm, derived('position held to full steps'), {
      grid: 'full',
    }),
    formula('g = q_m', 'Step that heights are rounded to', length.mm, derived('position held to microsteps'), {
      grid: 'micro',
    }),
    formula('n = h / g', 'Steps in one layer', ratio.one, derived('height over height of one')),
    formula('n_f = floor(n)', 'Whole steps below', count.one, wholeSteps),
    formula('n_c = ceil(n)', 'Whole steps above', count.one, wholeSteps),
    formula('h_f = n_f * g', 'Nearest whole-step height below', length.mm, wholeSteps),
    formula('h_c = n_c * g', 'Nearest whole-step height above', length.mm, wholeSteps),
    formula(
      'e = max(h - h_f, h_c - h)',
      'Largest error of a layer',
      length.um,
      derived('between whole steps both kinds of layer occur, because their mean is the layer height'),
    ),
    formula('s = e / h', 'The same as a share of the layer', ratio.percent, derived('error over layer height')),
    formula('r = g / 2', 'Height above the bed is off by at most', length.um, derived('rounding to the nearest step')),
    formula(
      'tau_inc = tau_h * sin(right_angle / m)',
      'Torque that one microstep of lag makes',
      torque.N_mm,
      microstepPaper,
    ),
    formula('delta = asin(tau_f / tau_h)', 'Electrical lag before it moves', angle.deg, sineTorque),
    formula('m_f = m * delta / right_angle', 'Microsteps asked for before it moves', ratio.one, sineTorque),
    formula('x_f = q * delta / right_angle', 'Smallest reliable move', length.um, sineTorque),
    formula('x_a = a * q', 'The motor’s own step error, plus or minus', length.um, derived('share of a full step')),
    formula('e_lim = k * h', 'Allowed', length.um, commonPractice),
  ],
  limits: [
    { of: 's', max: 'k', label: 'Largest error of a layer, share of the layer', cite: commonPractice },
    { of: 'x_f', max: 'e_lim', label: 'Smallest reliable move', cite: commonPractice },
  ],
  action: (ctx) => instruct(ctx, ctx.choice('grid')),
  proof:
    'Print two plain walls, at least ten repeats of the pattern high, one at the old layer height and one at the new, and look along them under a low lamp: the ridges at the spacing of the pattern should be gone from the second. For friction: put a dial indicator on the gantry, ask for ten single microsteps up, then ten down; each may fall short by the smallest reliable move, after a change of direction by twice that, and no more.',
  beware: [
    'The torque of one microstep of lag is not the torque the motor has left: the peak hardly depends on the number of microsteps. It only says how far the motor must lag before it overcomes friction.',
    'After the first move in one direction the lag stays about the same, so layers that all go up keep their height; it shows after every move the other way, then twice.',
    'Whole steps make layers alike; they do not make them true. The motor’s own step error and the screw’s lead error remain.',
    'The sine of the torque leaves out the detent torque (2 to 10 % of the holding torque, from memory) and the driver’s current error.',
    'A first layer of another height shifts the pattern; its repeat and the errors of the later layers’ thickness stay of the same size.',
    'Ridges once per turn of the screw (one lead apart) are not rounding: look for a bent screw.',
  ],
  examples: [
    {
      title: 'Lead 8 mm, layer 0.20 mm: five full steps, no rounding',
      given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.2 mm', m: '16' },
      expect: { q: [0.04, 1e-12], q_m: [0.0025, 1e-12], n: [5, 1e-12], h_f: [0.2, 1e-12], e: [0, 0], s: [0, 0] },
      verdict: 'within',
      source: derived('8 mm × 1.8° / 360° = 0.04 mm; 0.20 / 0.04 = 5'),
    },
    {
      title: 'Lead 8 mm, layer 0.25 mm: 25/4 full steps, repeats every 4 layers',
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
      source: derived('0.25 / 0.04 = 6.25; 0.28 − 0.25 = 0.03 mm; 0.03 / 0.25 = 12 %'),
    },
    {
      title: 'The same held to sixteenths of a step: 100 microsteps, no rounding',
      given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.25 mm', m: '16' },
      choices: { grid: 'micro' },
      expect: { g: [0.0025, 1e-12], n: [100, 1e-10], e: [0, 0], r: [1.25, 1e-9] },
      verdict: 'within',
      source: derived('0.25 / 0.0025 = 100'),
    },
    {
      title: 'Lead 2 mm, layer 0.125 mm: between steps, but too little to matter',
      given: { P_h: '2 mm', theta_s: '1.8 deg', h: '0.125 mm' },
      expect: { q: [0.01, 1e-12], n: [12.5, 1e-12], e: [5, 1e-9], s: [4, 1e-9], x_a: [0.5, 1e-9] },
      verdict: 'within',
      source: derived('2 mm × 1.8° / 360° = 0.01 mm; half a step of 0.01 mm in 0.125 mm is 4 %'),
    },
    {
      title: 'Belt and pinion, 20 teeth of 2 mm, no gear: a full step is a whole layer',
      given: { p: '2 mm', z: '20', theta_s: '1.8 deg', h: '0.3 mm', m: '16' },
      choices: { lift: 'belt' },
      expect: { q: [0.2, 1e-12], q_m: [0.0125, 1e-12], n: [1.5, 1e-12], e: [100, 1e-9], x_a: [10, 1e-9] },
      verdict: 'beyond',
      source: derived('2 mm × 20 × 1.8° / 360° = 0.2 mm; 0.3 mm lies midway between 0.2 and 0.4 mm'),
    },
    {
      title: 'Friction of half the holding torque: a third of a full step',
      given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.2 mm', m: '16', tau_h: '400 N·mm', tau_f: '200 N·mm ± 0' },
      expect: { delta: [30, 1e-9], m_f: [16 / 3, 1e-9], x_f: [40 / 3, 1e-9], tau_inc: [39.2, 0.02] },
      verdict: 'beyond',
      source: cite('Maker’s white paper on microstepping', 'Table 1: 9.80 % at 16 microsteps; asin 0.5 = 30°'),
    },
  ],
});
