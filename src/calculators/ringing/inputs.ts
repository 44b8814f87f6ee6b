import { acceleration, angle, count, force, length, mass, ratio, speed } from '../../quantity/kinds';
import { beltSources, TABLE_WIDTH } from '../../reference/belts';
import { commonPractice, derived } from '../../reference/citation';
import { input } from '../../engine/calculator';

const counted = { by: 'count' };
const direct = { by: 'direct' };
const one = { test: 'one' };
const two = { test: 'two' };

/** What is asked: the ripples, the speed, the second print, the drive, what swings, the limits. */
export const inputs = {
  x_N: input('Length over the ripples', length.mm, {
    range: [0.5, 500],
    tool: 'caliper',
    when: counted,
    hint: 'From one crest to another, several ripples on. Light from the side shows them; a pencil rubbed flat over the wall marks the crests.',
  }),
  N: input('Spaces between those two crests', count.one, {
    typical: 5,
    decided: true,
    range: [1, 200],
    when: counted,
    hint: 'One less than the crests counted.',
  }),
  P_w: input('Spacing of the ripples', length.mm, {
    range: [0.05, 200],
    spread: 0.1,
    phone: 'ridges',
    when: direct,
    hint: 'From crest to crest. Type its ± behind it where you know it.',
  }),
  v: input('Print speed', speed.mm_s, {
    range: [1, 1000],
    from: 'print.speed',
    hint: 'Of that very wall, where the ripples are: not of the ramp, not of other walls. Outer walls are often set slower.',
  }),
  x_0: input('From the corner to where counting began', length.mm, {
    typical: 5,
    spread: 0.5,
    range: [0, 500],
    tool: 'rule',
    hint: 'Along the wall, after the corner. The first ripples lie in the ramp, closer together: leave them out.',
  }),
  a: input('Acceleration', acceleration.mm_s2, {
    typical: 1000,
    range: [0, 1e5],
    from: 'carriage.acceleration',
    hint: 'As set for that wall.',
  }),
  theta_w: input('Angle between wall and axis', angle.deg, {
    seldom: true,
    typical: 0,
    spread: 1,
    range: [0, 80],
    tool: 'protractor',
    hint: 'The axis that swings. 0 where the wall runs along it, as behind a plain corner of X and Y.',
  }),
  x_N2: input('Length over the ripples, second print', length.mm, {
    range: [0.5, 500],
    tool: 'caliper',
    when: { ...counted, ...two },
  }),
  N_2: input('Spaces between those crests, second print', count.one, {
    typical: 5,
    decided: true,
    range: [1, 200],
    when: { ...counted, ...two },
  }),
  P_w2: input('Spacing of the ripples, second print', length.mm, {
    range: [0.05, 200],
    spread: 0.1,
    phone: 'ridges',
    when: { ...direct, ...two },
  }),
  v_2: input('Speed of the second print', speed.mm_s, {
    range: [1, 1000],
    when: two,
    hint: 'The same wall at half the speed or less, or twice. Nothing else changed.',
  }),
  n_h: input('Ripples until they are half as high', ratio.one, {
    optional: true,
    range: [0.2, 100],
    spread: 0.5,
    hint: 'May be left empty. From the highest on; by eye, to half a ripple.',
  }),
  v_c: input('Speed kept through the corner', speed.mm_s, {
    range: [0, 500],
    from: 'print.corner-speed',
    when: { corner: 'kept' },
    hint: 'What the axis has when the corner comes, and loses there at once.',
  }),
  p: input('Belt pitch', length.mm, { typical: 2, range: [1, 20], from: 'belt.pitch', when: one }),
  z: input('Teeth of the motor pulley', count.one, {
    typical: 20,
    range: [8, 200],
    from: 'belt.pulley-teeth',
    when: one,
  }),
  theta_s: input('Full step of the motors', angle.deg, {
    seldom: true,
    typical: 1.8,
    range: [0.1, 15],
    from: 'z.step-angle',
    when: one,
  }),
  i_b: input('Gear ratio, motor turns per turn of the pulley', ratio.one, {
    seldom: true,
    typical: 1,
    range: [0.05, 200],
    from: 'belt.gear-ratio',
    when: one,
  }),
  M: input('Moving mass', mass.kg, { typical: 0.5, spread: 0.1, range: [0.01, 100], from: 'carriage.mass' }),
  L_1: input('Belt from the carriage to the motor pulley', length.mm, {
    seldom: true,
    typical: 250,
    spread: 50,
    range: [5, 3000],
    tool: 'tape',
    hint: 'The straight strand, the carriage where the ripples were printed.',
  }),
  L_t1: input('Length of the first belt, clamp to clamp', length.mm, {
    seldom: true,
    typical: 1000,
    spread: 200,
    range: [50, 10000],
    tool: 'tape',
    from: 'belt.length',
    hint: 'All of it that stretches: round the pulleys, from one clamp to the other.',
  }),
  w: input('Belt width', length.mm, { seldom: true, typical: 6, range: [2, 100], from: 'belt.width' }),
  w_0: input('Width that the table’s values stand for', length.mm, {
    seldom: true,
    typical: TABLE_WIDTH,
    range: [1, 200],
    basis: derived('all rows are brought to this width'),
  }),
  C_0: input('Specific spring rate, at that width', force.N, {
    seldom: true,
    range: [100, 1e7],
    basis: beltSources.springRate,
    hint: 'Force that would stretch it to double its length: a piece of length l has the stiffness C / l.',
  }),
  F: input('Pull on the frame', force.N, {
    seldom: true,
    optional: true,
    range: [0.1, 1000],
    tool: 'luggage-scale',
    hint: 'May be left empty. Level, along the axis, where its rail is held; machine on its usual table, motors off.',
  }),
  y_f: input('Way the frame gives under it', length.mm, {
    seldom: true,
    optional: true,
    range: [0.005, 50],
    tool: 'dial',
    hint: 'Dial indicator at the same height, its stand on the table beside the machine.',
  }),
  M_f: input('Mass that sways with the frame', mass.kg, {
    seldom: true,
    optional: true,
    spread: 1,
    range: [0.1, 500],
    hint: 'What stands above the soft place: frame top, gantry, spool if it hangs there.',
  }),
  x_tol: input('Ripple height allowed', length.mm, {
    seldom: true,
    typical: 0.02,
    range: [0.001, 1],
    basis: commonPractice,
    hint: 'From the even wall to a crest. A gloss wall shows 0.01 mm, a dull one hides 0.03 mm.',
  }),
  g_lim: input('Spacing counts as another from', ratio.percent, {
    seldom: true,
    typical: 5,
    range: [0.5, 50],
    basis: commonPractice,
    when: one,
  }),
  kappa_lim: input('Exponent from which it swings', ratio.one, {
    seldom: true,
    typical: 0.5,
    range: [0.1, 0.9],
    basis: derived('midway between 0 for a part and 1 for what swings'),
    when: two,
  }),
};
