import { angle, bendingStiffness, force, frequency, length, linearDensity, mass, ratio } from '../../quantity/kinds';
import { beltSources, TABLE_WIDTH } from '../../reference/belts';
import { commonPractice, derived } from '../../reference/citation';
import { input } from '../../engine/calculator';

const different = { belts: 'different' };
const stiff = { ends: ['pinned', 'clamped'] };
const weighed = { mass: 'weigh' };
const tangent =
  'Tangent point to tangent point: from where the belt leaves one pulley, or its clamp, to where it meets the next.';
const pluck = 'Pluck the middle softly across its flat side, nothing touching it. The lowest note counts.';

/** What is asked: two spans and their notes, the belts, the offset of their tensioners, the limits. */
export const inputs = {
  L_1: input('Free span of the first belt', length.mm, {
    range: [20, 3000],
    tool: 'tape',
    from: 'belt.span',
    hint: tangent,
  }),
  f_1: input('Note of the first belt', frequency.Hz, { range: [5, 1000], spread: 0.5, phone: 'note', hint: pluck }),
  L_2: input('Free span of the second belt', length.mm, {
    range: [20, 3000],
    tool: 'tape',
    from: 'belt.second-span',
    hint: `${tangent} Where the carriage allows, make both spans alike.`,
  }),
  f_2: input('Note of the second belt', frequency.Hz, { range: [5, 1000], spread: 0.5, phone: 'note', hint: pluck }),
  w: input('Belt width', length.mm, { typical: 6, range: [2, 100], from: 'belt.width' }),
  w_2: input('Width of the second belt', length.mm, {
    typical: 6,
    range: [2, 100],
    from: 'belt.second-width',
    when: different,
  }),
  m_s: input('Mass of the piece weighed', mass.g, { range: [0.1, 10000], tool: 'kitchen-scale', when: weighed }),
  l_s: input('Length of the piece weighed', length.mm, {
    typical: 1000,
    spread: 1,
    range: [50, 100000],
    tool: 'tape',
    when: weighed,
  }),
  m_s2: input('Mass of the piece weighed, second belt', mass.g, {
    range: [0.1, 10000],
    tool: 'kitchen-scale',
    when: { ...different, ...weighed },
  }),
  l_s2: input('Length of the piece weighed, second belt', length.mm, {
    typical: 1000,
    spread: 1,
    range: [50, 100000],
    tool: 'tape',
    when: { ...different, ...weighed },
  }),
  mu_a: input('Mass per metre of the belt', linearDensity.g_m, {
    range: [0.5, 2000],
    from: 'belt.mass-per-length',
    when: { mass: 'typed' },
  }),
  mu_b: input('Mass per metre of the second belt', linearDensity.g_m, {
    range: [0.5, 2000],
    from: 'belt.second-mass-per-length',
    when: { ...different, mass: 'typed' },
  }),
  EI_1: input('Bending stiffness E·I of the belt', bendingStiffness.N_mm2, {
    range: [0.1, 2000],
    from: 'belt.bending-stiffness',
    hint: 'The check “Belt tension” finds it from the droop of an overhanging piece.',
    when: stiff,
  }),
  EI_2: input('Bending stiffness E·I of the second belt', bendingStiffness.N_mm2, {
    range: [0.1, 2000],
    from: 'belt.second-bending-stiffness',
    when: { ...different, ...stiff },
  }),
  x: input('Offset of the tensioners, + second further out', length.mm, {
    optional: true,
    signed: true,
    range: [-200, 200],
    tool: 'caliper',
    hint: 'May be left empty. From the same edge of the frame to each tensioned pulley, second less first, once both pull alike.',
  }),
  x_d: input('Offset that the machine has by design, + second further out', length.mm, {
    seldom: true,
    signed: true,
    typical: 0,
    range: [-200, 200],
    basis: derived('two loops of equal length'),
    from: 'belt.tensioner-offset',
  }),
  p: input('Belt pitch', length.mm, {
    seldom: true,
    range: [1, 20],
    basis: beltSources.pitch,
    from: 'belt.pitch',
  }),
  theta_w: input('Wrap of the belt on the pulley that is moved', angle.deg, {
    seldom: true,
    typical: 180,
    spread: 10,
    range: [20, 180],
    tool: 'protractor',
    from: 'belt.tensioner-wrap',
    hint: 'Half round is 180°. Where a clamp is moved in line with the belt, enter 60°: it takes up once its way.',
  }),
  d_lim: input('Difference allowed, of the mean tension', ratio.percent, {
    seldom: true,
    typical: 5,
    range: [0.1, 100],
    basis: commonPractice,
  }),
  w_0: input('Width that the table’s values stand for', length.mm, {
    seldom: true,
    typical: TABLE_WIDTH,
    range: [1, 200],
    basis: derived('all rows are brought to this width'),
  }),
  m_0: input('Mass per metre at that width', linearDensity.g_m, {
    seldom: true,
    range: [0.5, 2000],
    basis: beltSources.mass,
    when: { mass: 'table' },
  }),
  m_02: input('Mass per metre at that width, second belt', linearDensity.g_m, {
    seldom: true,
    range: [0.5, 2000],
    basis: beltSources.mass,
    when: { ...different, mass: 'table' },
  }),
  T_b: input('Least tension that seats the teeth, at that width', force.N, {
    seldom: true,
    range: [0, 2000],
    basis: beltSources.least,
  }),
  T_a: input('Allowable working tension, at that width', force.N, {
    seldom: true,
    range: [1, 20000],
    basis: beltSources.allowable,
  }),
  T_b2: input('Least tension that seats the teeth, second belt', force.N, {
    seldom: true,
    range: [0, 2000],
    basis: beltSources.least,
    when: different,
  }),
  T_a2: input('Allowable working tension, second belt', force.N, {
    seldom: true,
    range: [1, 20000],
    basis: beltSources.allowable,
    when: different,
  }),
  h: input('Belt height over the teeth', length.mm, {
    seldom: true,
    range: [0.3, 20],
    basis: beltSources.height,
    tool: 'caliper',
  }),
  k_h: input('Least span, in belt heights', ratio.one, {
    seldom: true,
    typical: 20,
    range: [1, 200],
    basis: commonPractice,
  }),
  epsilon_max: input('Most stiffness for which the correction holds', ratio.one, {
    seldom: true,
    typical: 0.05,
    range: [0.001, 0.2],
    basis: derived('exact frequency of a held span: there the corrected tension is 0.5 % high'),
    when: stiff,
  }),
};
