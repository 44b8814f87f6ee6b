import {
  acceleration,
  angle,
  bendingStiffness,
  force,
  frequency,
  length,
  linearDensity,
  mass,
  ratio,
} from '../../quantity/kinds';
import { beltSources, TABLE_WIDTH } from '../../reference/belts';
import { cite, commonPractice, derived } from '../../reference/citation';
import { input } from '../../engine/calculator';

const first = { which: 'first' };
const second = { which: 'second' };
const note = { by: 'note' };
const press = { by: 'press' };
const stiff = { by: 'note', ends: ['pinned', 'clamped'] };
const tangent =
  'Tangent point to tangent point: from where the belt leaves one pulley, or its clamp, to where it meets the next. Bring the carriage where this is longest.';

/** What is asked: the reading, the belt, what it moves, the tensioner, the limits. */
export const inputs = {
  L_1: input('Free span of the first belt', length.mm, {
    range: [20, 3000],
    tool: 'tape',
    from: 'belt.span',
    hint: tangent,
    when: first,
  }),
  L_2: input('Free span of the second belt', length.mm, {
    range: [20, 3000],
    tool: 'tape',
    from: 'belt.second-span',
    hint: tangent,
    when: second,
  }),
  f: input('Note of the plucked span', frequency.Hz, {
    range: [5, 1000],
    spread: 0.5,
    phone: 'note',
    hint: 'Pluck the middle softly across its flat side, nothing touching it. The lowest note counts.',
    when: note,
  }),
  F: input('Force on the middle of the span', force.N, {
    range: [0.05, 200],
    tool: 'luggage-scale',
    hint: 'Hook the scale round the middle and pull square to the belt.',
    when: press,
  }),
  y: input('Way the middle moves under it', length.mm, {
    range: [0.2, 300],
    tool: 'rule',
    hint: 'Against a straightedge along the belt at rest. About a sixtieth of the span is usual.',
    when: press,
  }),
  w: input('Belt width', length.mm, { typical: 6, range: [2, 100], from: 'belt.width' }),
  m_s: input('Mass of the piece weighed', mass.g, {
    range: [0.1, 10000],
    tool: 'kitchen-scale',
    hint: 'Of the same belt. With a kitchen scale weigh several metres; a letter or jeweller’s scale does with one: type its ±.',
    when: { by: 'note', mass: 'weigh' },
  }),
  l_s: input('Length of the piece weighed', length.mm, {
    typical: 1000,
    spread: 1,
    range: [50, 100000],
    tool: 'tape',
    when: { by: 'note', mass: 'weigh' },
  }),
  mu_1: input('Mass per metre of the belt', linearDensity.g_m, {
    range: [0.5, 2000],
    from: 'belt.mass-per-length',
    hint: 'As marked by its supplier, or as weighed before.',
    when: { by: 'note', mass: 'typed' },
  }),
  EI: input('Bending stiffness E·I of the belt', bendingStiffness.N_mm2, {
    range: [0.1, 2000],
    from: 'belt.bending-stiffness',
    hint: 'No table has it. Let a piece droop over an edge, then ask below for the E·I that gives the droop you see.',
    when: stiff,
  }),
  l_o: input('Overhang for finding E·I', length.mm, {
    seldom: true,
    typical: 40,
    range: [5, 300],
    tool: 'rule',
    basis: commonPractice,
    hint: 'Flat side down, end free, without a curl. So short that it droops by a quarter of itself at most.',
    when: stiff,
  }),
  M: input('Moving mass', mass.kg, {
    typical: 0.5,
    spread: 0.1,
    range: [0.01, 100],
    from: 'carriage.mass',
    when: first,
  }),
  M_2: input('Mass that the second belt moves', mass.kg, {
    typical: 1,
    spread: 0.3,
    range: [0.01, 100],
    from: 'belt.second-mass',
    when: second,
  }),
  a: input('Acceleration', acceleration.mm_s2, { typical: 1000, range: [0, 1e5], from: 'carriage.acceleration' }),
  L_t1: input('Length of the first belt, clamp to clamp', length.mm, {
    typical: 1000,
    spread: 200,
    range: [50, 10000],
    tool: 'tape',
    from: 'belt.length',
    hint: 'All of it that stretches: round the pulleys, from one clamp to the other.',
    when: first,
  }),
  L_t2: input('Length of the second belt, clamp to clamp', length.mm, {
    typical: 1000,
    spread: 200,
    range: [50, 10000],
    tool: 'tape',
    from: 'belt.second-length',
    hint: 'All of it that stretches: round the pulleys, from one clamp to the other.',
    when: second,
  }),
  P_a: input('Pitch of the tensioner’s screw', length.mm, {
    seldom: true,
    typical: 0.5,
    range: [0.1, 5],
    basis: cite('ISO 261, metric threads', 'coarse pitch of M3: 0.5 mm', true),
    from: 'belt.adjuster-pitch',
    when: { adjuster: ['clockwise', 'anticlockwise'] },
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
    when: { by: 'note', mass: 'table' },
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
  C_0: input('Specific spring rate, at that width', force.N, {
    seldom: true,
    range: [100, 1e7],
    basis: beltSources.springRate,
    hint: 'Force that would stretch it to double its length: a piece of length l has the stiffness C / l.',
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
  s_max: input('Most deflection, as a share of the span', ratio.percent, {
    seldom: true,
    typical: 5,
    range: [0.1, 25],
    basis: commonPractice,
    when: press,
  }),
};
