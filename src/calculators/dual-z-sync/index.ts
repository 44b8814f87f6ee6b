import { angle, count, length, ratio, slope } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator, choice, formula, input, type Movement } from '../calculator';

const pitchOfTurn = cite(
  'ISO 5296 and ISO 13050, synchronous belt drives',
  'pitch geometry: one tooth is one pitch',
  true,
);
const lead = cite('Machinery’s Handbook', 'power screws: lead = pitch × starts', true);

/** Least turn of a screw that a hand sets with a grub screw. */
const HAND_TURN = (2 * Math.PI) / 180;
/** How far from a whole number a tooth count may lie and still be a tooth count. */
const NEAR_WHOLE = 0.25;

// Seen from above, a right-hand screw turned clockwise runs away from the eye, so a nut that cannot turn climbs it.
const loweringTurn = { right: 'anticlockwise', left: 'clockwise' } as const;

export default calculator({
  cautions: [
    'Switch off and unplug before a hand goes near belts or screws; a homing move pinches.',
    'Support the gantry before loosening a screw or a belt: it can drop.',
    'Let nozzle and bed cool before a gauge or a hand goes under the nozzle.',
  ],
  choices: {
    drive: choice('Screws joined by', { belt: { label: 'a closed belt' }, motors: { label: 'two motors' } }, 'belt', {
      from: 'z.drive',
    }),
    hand: choice('Thread', { right: { label: 'right-hand' }, left: { label: 'left-hand' } }, 'right', {
      from: 'z.hand',
    }),
  },
  inputs: {
    dh: input('Height difference, right minus left', length.mm, {
      range: [-50, 50],
      tool: 'caliper',
      signed: true,
      hint: 'From the frame up to the gantry, at two places; or a gauge under the nozzle at two places (thicker gauge = higher).',
    }),
    S_m: input('Distance between the two places', length.mm, {
      typical: 400,
      spread: 1,
      range: [20, 2000],
      tool: 'rule',
      hint: 'At the screws this is the distance between the screws.',
    }),
    S: input('Distance between the screws', length.mm, {
      typical: 400,
      spread: 1,
      range: [20, 2000],
      tool: 'rule',
      from: 'z.screw-distance',
    }),
    W: input('Bed width', length.mm, { typical: 220, spread: 1, range: [20, 2000], tool: 'rule', from: 'bed.width' }),
    P_h: input('Screw lead', length.mm, {
      typical: 8,
      range: [0.5, 50],
      from: 'z.lead',
      hint: 'Lead = pitch × starts: travel of the nut in one turn.',
    }),
    z: input('Teeth of a sync pulley', count.one, {
      typical: 20,
      range: [8, 200],
      from: 'z.pulley-teeth',
      when: { drive: 'belt' },
    }),
    theta_s: input('Full step of the motors', angle.deg, {
      typical: 1.8,
      range: [0.1, 15],
      from: 'z.step-angle',
      when: { drive: 'motors' },
    }),
    h_1: input('First layer', length.mm, { typical: 0.2, range: [0.04, 2], from: 'print.first-layer' }),
    k_1: input('Share of the first layer allowed', ratio.one, {
      typical: 0.25,
      range: [0.01, 1],
      basis: commonPractice,
      seldom: true,
    }),
  },
  formulas: [
    formula('h_t = P_h / z', 'Height of one tooth', length.mm, pitchOfTurn, { drive: 'belt' }),
    formula('h_t = P_h * theta_s / rev', 'Height of one full step', length.mm, lead, { drive: 'motors' }),
    formula('dh_s = dh * S / S_m', 'Difference at the screws', length.mm, derived('similar triangles')),
    formula('n = dh_s / h_t', 'Teeth or steps out, as measured', ratio.one, derived('height over height of one')),
    formula('n_w = round(n)', 'Whole teeth or steps out', count.one, derived('nearest whole number')),
    formula('r = dh_s - n_w * h_t', 'Remainder', length.mm, derived('what whole teeth or steps leave')),
    formula('phi = rev * r / P_h', 'Remainder as screw rotation', angle.deg, lead),
    formula('i = dh_s / S', 'Slope', slope.mm_m, derived('rise over run')),
    formula('alpha = atan(i)', 'Slope angle', angle.deg, derived('rise over run')),
    formula('dh_bed = dh_s * W / S', 'Error across the bed', length.mm, derived('similar triangles')),
    formula('dh_lim = k_1 * h_1', 'Allowed across the bed', length.mm, commonPractice),
  ],
  limits: [
    {
      of: 'dh_bed',
      max: 'dh_lim',
      symmetric: true,
      label: 'Height difference across the bed',
      cite: commonPractice,
    },
  ],
  action(ctx) {
    const dh = ctx.number('dh_s');
    const high = dh >= 0 ? 'right' : 'left';
    if (ctx.verdict === 'within') {
      return {
        headline: 'Leave it: the gantry is level enough.',
        steps: ['Note the reading for this machine; measure again after the belt or a screw was touched.'],
      };
    }
    if (ctx.verdict === 'too close') {
      return {
        headline: 'Measure again with a better tool before turning anything.',
        steps: ['The reading does not tell whether the gantry is out; turning now may make it worse.'],
      };
    }
    const whole = ctx.number('n_w');
    const remainder = ctx.number('phi');
    const teeth = Math.abs(whole);
    const belt = ctx.choice('drive') === 'belt';
    const lower = loweringTurn[ctx.choice('hand')];
    const opposite = lower === 'clockwise' ? 'anticlockwise' : 'clockwise';
    const fine = Math.sign(remainder) * Math.sign(dh) >= 0 ? lower : opposite;
    const movements: Movement[] = [];
    const steps: string[] = [];
    const unit = belt ? (teeth === 1 ? 'tooth' : 'teeth') : teeth === 1 ? 'full step' : 'full steps';
    if (teeth > 0) {
      movements.push({
        part: `${high} screw`,
        direction: lower,
        amount: (teeth * 2 * Math.PI * ctx.number('h_t')) / ctx.number('P_h'),
      });
      steps.push(
        belt
          ? `Slacken the sync belt, lift it off the ${high} pulley, turn that screw ${lower} (seen from above) by ${teeth} ${unit}, put the belt back.`
          : `With the motors off, turn the ${high} screw ${lower} (seen from above) by ${teeth} ${unit}; leave the other where it is.`,
      );
    }
    if (Math.abs(remainder) >= HAND_TURN) {
      movements.push({ part: `${high} screw`, direction: fine, amount: Math.abs(remainder) });
      const then = teeth > 0 ? 'Then loosen' : 'Loosen';
      const held = belt ? 'the pulley’s grub screw' : 'the coupling’s grub screw';
      steps.push(
        `${then} ${held} on the ${high} side, turn that screw ${fine} by ${ctx.text('phi', { magnitude: true })}, tighten.`,
      );
    } else {
      steps.push('Leave the remainder: it is less than a hand can set (about 2°).');
    }
    const count = ctx.number('n');
    if (belt && Math.abs(count - whole) > NEAR_WHOLE) {
      steps.push(
        `${ctx.text('n', { magnitude: true })} is not near a whole number of teeth: look also for a slipped grub screw, a bent mount or a loose wheel.`,
      );
    }
    const by = teeth > 0 ? `${teeth} ${unit}` : ctx.text('phi', { magnitude: true });
    return {
      headline:
        movements.length > 0
          ? `The ${high} side is high: turn the ${high} screw ${teeth > 0 ? lower : fine}, seen from above, by ${by}.`
          : `The ${high} side is high by less than a hand can set: leave it, or even it out at the bed.`,
      steps,
      movements,
    };
  },
  proof:
    'Measure both ends again at the same places: the difference across the bed should now be within the limit. Then run the gantry up and down once and measure a third time; if it has moved again, something slips.',
  beware: [
    'Two heights taken from a bent frame or an untrue bed show the frame, not the sync: measure from something flat.',
    'A whole number of teeth can also come from a grub screw that slipped; mark screw and pulley with a pen and look again in a week.',
  ],
  examples: [
    {
      title: 'Two teeth out, read with a caliper',
      given: { dh: '0.75 mm', S_m: '400 mm ± 0', S: '400 mm ± 0', P_h: '8 mm', z: '20' },
      expect: { h_t: [0.4, 1e-9], n: [1.875, 1e-9], n_w: [2, 0], r: [-0.05, 1e-9], phi: [-2.25, 1e-9] },
      verdict: 'beyond',
      source: derived('8 mm / 20 = 0.4 mm; 0.75 = 2 × 0.4 − 0.05; 360° × −0.05 / 8 = −2.25°'),
    },
    {
      title: 'The same difference over half the distance counts double',
      given: { dh: '0.4 mm', S_m: '200 mm ± 0', S: '400 mm ± 0', W: '200 mm ± 0', P_h: '8 mm', z: '16' },
      expect: { dh_s: [0.8, 1e-9], n: [1.6, 1e-9], dh_bed: [0.4, 1e-9], i: [2, 1e-9] },
      verdict: 'beyond',
      source: derived('similar triangles by hand'),
    },
    {
      title: 'Two motors: steps instead of teeth',
      given: { dh: '0.12 mm', S_m: '300 mm ± 0', S: '300 mm ± 0', W: '300 mm ± 0', P_h: '8 mm', theta_s: '1.8 deg' },
      choices: { drive: 'motors' },
      expect: { h_t: [0.04, 1e-9], n: [3, 1e-9] },
      verdict: 'beyond',
      source: derived('8 mm × 1.8° / 360° = 0.04 mm'),
    },
  ],
});
