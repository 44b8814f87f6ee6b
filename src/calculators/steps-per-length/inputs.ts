import { angle, count, expansion, length, perLength, ratio, temperature } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { input, type When } from '../../engine/calculator';
import { fed, onFeed, printed, travelled } from './choices';

const belt = { axis: ['x', 'y'] };
const z = { axis: ['z', 'zb'] };
const screw = { axis: 'z' };
const pinion = { axis: 'zb' };
const sides = { ...printed, pair: 'sides' };
const lengths = { ...printed, pair: 'lengths' };
const known = { ...printed, material: ['pla', 'petg', 'abs', 'pc'] };

const steps = (of: string, from: string, axis: string | readonly string[]) =>
  input(`Steps per length, ${of}`, perLength.per_mm, {
    range: [0.1, 100_000],
    from,
    when: { axis },
    hint: 'As set in the machine now; microsteps count as steps.',
  });
type Range = readonly [number, number];
/** What a short and a long size may be, mm. */
const SMALL: Range = [1, 300];
const LARGE: Range = [20, 2000];
const size = (label: string, range: Range, when: When, hint?: string) =>
  input(label, length.mm, { range, tool: 'caliper', when, ...(hint === undefined ? {} : { hint }) });
const drawn = (label: string, typical: number, range: Range, when: When) =>
  input(label, length.mm, { typical, decided: true, range, when });

/** What is asked: the number set, the parts of the drive, the travel or the piece, the limit. */
export const inputs = {
  S_x: steps('X', 'steps.x', 'x'),
  S_y: steps('Y', 'steps.y', 'y'),
  S_z: steps('Z', 'steps.z', ['z', 'zb']),
  S_e: steps('filament', 'steps.extruder', 'feed'),
  l_c: input('Length commanded', length.mm, {
    typical: 100,
    decided: true,
    range: [1, 3000],
    when: travelled,
    hint: 'One move, slow, away from where the last one came from. The longer, the less doubt.',
  }),
  x_1: input('Place before the move', length.mm, {
    typical: 0,
    spread: 0.03,
    range: [0, 3000],
    tool: 'caliper',
    when: travelled,
    hint: 'Of the carriage from a fixed stop, or 0 where the tool is set to zero there.',
  }),
  x_2: input('Place after the move', length.mm, {
    range: [0, 3000],
    tool: 'caliper',
    when: travelled,
    hint: 'From the same stop; the move goes away from it. With an indicator: touch a gauge of known length at both ends and enter the gauge, plus or minus what the indicator shows.',
  }),
  b: input('Lost motion not taken up before the start', length.mm, {
    seldom: true,
    typical: 0,
    spread: 0.02,
    range: [0, 5],
    when: travelled,
    hint: 'None where the last move before the start went the same way. Else what the carriage gives when pushed to and fro with the motor holding.',
  }),
  l_f: input('Filament commanded', length.mm, {
    typical: 100,
    decided: true,
    range: [5, 2000],
    when: fed,
    hint: 'Slowly, hot end at printing heat: fed cold, the gear grinds. Feed a little first, so that its slack is taken up.',
  }),
  r_1: input('Mark from the inlet, before', length.mm, {
    typical: 120,
    spread: 0.5,
    range: [5, 3000],
    tool: 'rule',
    when: fed,
    hint: 'A pen mark on the filament, farther than will be fed: what is left afterwards can then be measured.',
  }),
  r_2: input('Mark from the inlet, after', length.mm, { range: [0, 3000], tool: 'rule', when: fed }),
  r_3: input('Mark after feeding it at print speed', length.mm, {
    seldom: true,
    optional: true,
    range: [0, 3000],
    tool: 'rule',
    when: fed,
    hint: 'May be left empty. The same test from the same mark, at the flow that you print with: what is missing then is slip.',
  }),
  D_o: drawn('Outside size, as drawn', 100, LARGE, sides),
  m_o: size(
    'Outside size, measured',
    LARGE,
    sides,
    'Clear of the first layers, which are squeezed wide, and of the seam. Cold.',
  ),
  D_i: drawn('Inside size, as drawn', 80, LARGE, sides),
  m_i: size('Inside size, measured', LARGE, sides, 'Between flat walls of the same piece, along the same axis.'),
  l_1: drawn('Short size, as drawn', 20, SMALL, lengths),
  m_1: size(
    'Short size, measured',
    SMALL,
    lengths,
    'Clear of the first layers, which are squeezed wide, and of the seam. Cold.',
  ),
  l_2: drawn('Long size, as drawn', 120, LARGE, lengths),
  m_2: size('Long size, measured', LARGE, lengths),
  alpha: input('Expansion of the plastic', expansion.um_mK, {
    seldom: true,
    range: [1, 300],
    basis: cite('Tables of plastics', 'expansion below the glass transition', true),
    when: known,
  }),
  T_g: input('Glass transition: where it goes stiff', temperature.C, {
    seldom: true,
    range: [30, 300],
    basis: cite('Tables of plastics', 'glass transition', true),
    when: known,
  }),
  T_r: input('Temperature of the piece when measured', temperature.C, {
    seldom: true,
    typical: 22,
    spread: 3,
    range: [-20, 60],
    basis: commonPractice,
    when: known,
  }),
  s_m: input('Shrinkage of the plastic', ratio.percent, {
    range: [0, 10],
    spread: 0.2,
    when: { ...printed, material: 'other' },
    hint: 'Of a printed piece; a maker’s mould shrinkage is the next best. Half-crystalline plastics (polyamide, polypropylene) shrink 1 to 2 %.',
  }),
  theta_s: input('Full step of the motors', angle.deg, { typical: 1.8, range: [0.1, 15], from: 'z.step-angle' }),
  m_b: input('Microsteps per full step', count.one, {
    typical: 16,
    range: [1, 256],
    basis: commonPractice,
    from: 'belt.microsteps',
    when: belt,
  }),
  m_z: input('Microsteps per full step', count.one, {
    typical: 16,
    range: [1, 256],
    basis: commonPractice,
    from: 'z.microsteps',
    when: z,
  }),
  m_e: input('Microsteps per full step', count.one, {
    typical: 16,
    range: [1, 256],
    basis: commonPractice,
    from: 'extruder.microsteps',
    when: onFeed,
  }),
  p: input('Belt pitch', length.mm, {
    typical: 2,
    range: [1, 20],
    from: 'belt.pitch',
    when: belt,
    hint: 'As marked. Over 50 teeth by rule: 100 mm, or 101.6 mm for an inch belt of 2.032 mm.',
  }),
  z: input('Teeth of the motor pulley', count.one, {
    typical: 20,
    range: [8, 200],
    from: 'belt.pulley-teeth',
    when: belt,
  }),
  P_h: input('Screw lead', length.mm, {
    typical: 8,
    range: [0.5, 50],
    from: 'z.lead',
    when: screw,
    hint: 'Lead = pitch × starts: travel of the nut in one turn.',
  }),
  p_z: input('Pitch of the Z belt', length.mm, { typical: 2, range: [1, 20], from: 'z.belt-pitch', when: pinion }),
  z_z: input('Teeth of the Z pinion', count.one, {
    typical: 20,
    range: [8, 200],
    from: 'z.pinion-teeth',
    when: pinion,
  }),
  d_g: input('Feed gear: diameter where it grips', length.mm, {
    typical: 11,
    spread: 0.5,
    range: [2, 60],
    basis: commonPractice,
    tool: 'caliper',
    from: 'extruder.gear-diameter',
    when: onFeed,
    hint: 'A little less than over its teeth. A start only: the filament fed tells it better.',
  }),
  i_b: input('Gear ratio, motor turns per turn of the pulley', ratio.one, {
    seldom: true,
    typical: 1,
    range: [0.05, 200],
    from: 'belt.gear-ratio',
    when: belt,
  }),
  i_z: input('Gear ratio, motor turns per turn of the drive', ratio.one, {
    seldom: true,
    typical: 1,
    range: [0.05, 200],
    from: 'z.gear-ratio',
    when: z,
  }),
  i_e: input('Gear ratio, motor turns per turn of the feed gear', ratio.one, {
    typical: 1,
    range: [0.05, 200],
    from: 'extruder.gear-ratio',
    when: onFeed,
    hint: 'Teeth of the large wheel over teeth of the small one; 1 where the gear sits on the motor.',
  }),
  e_lim: input('Allowed error of travel', ratio.percent, {
    seldom: true,
    range: [0.001, 20],
    basis: derived(
      'judged: a belt at 20 N is some 0.1 % longer than slack, and tables allow a screw as much; a feed repeats to about 1 %',
    ),
  }),
};
