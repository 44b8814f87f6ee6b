import { length, money, pressure, ratio, time } from '../../quantity/kinds';
import { commonPractice, type Citation } from '../../reference/citation';
import { iso2306, iso273, iso7089 } from '../../reference/drills';
import { insertHole } from '../../reference/inserts';
import { iso898, shearRatio } from '../../reference/property-classes';
import { isoProfile, isoTolerances } from '../../reference/threads';
import { input, type InputSpec } from '../../engine/calculator';

/** From a table, by the screw picked; may be written over. */
const table = (label: string, basis: Citation, hint?: string): InputSpec =>
  input(label, length.mm, {
    seldom: true,
    decided: true,
    range: [0.1, 30],
    basis,
    ...(hint === undefined ? {} : { hint }),
  });
const minutes = (label: string, typical: number): InputSpec =>
  input(label, time.min, { seldom: true, decided: true, typical, range: [0, 10000], basis: commonPractice });
const cost = (label: string, typical: number): InputSpec =>
  input(label, money.one, {
    seldom: true,
    decided: true,
    typical,
    range: [0, 1e6],
    basis: commonPractice,
    hint: 'Set your own.',
  });

/** What is asked: the hole, then what tables and habit supply. */
export const inputs = {
  L_r: input('Reach of the screw into the hole', length.mm, {
    range: [0.5, 100],
    tool: 'caliper',
    hint: 'Length below the head, less what it clamps.',
  }),
  L_e: input('Good thread left, in the screw’s reach', length.mm, {
    range: [0, 100],
    tool: 'caliper',
    hint: 'Reach of the screw less the depth at which it first bites. 0 where it turns freely all the way.',
  }),
  L_b: input('Good thread deeper than the screw’s tip', length.mm, {
    typical: 0,
    range: [0, 100],
    tool: 'caliper',
    hint: 'Screw in a longer screw by hand until it stops, and measure how much farther it goes.',
  }),
  L_h: input('Depth of the hole; through hole: thickness', length.mm, {
    range: [0.5, 200],
    tool: 'caliper',
    hint: 'To the shoulder of the drilled hole, with the depth rod.',
  }),
  w: input('Least wall beside the thread', length.mm, {
    range: [0.1, 200],
    tool: 'caliper',
    hint: 'From the edge of the threaded hole to the nearest outside face, slot or other hole.',
  }),
  tau: input('Shear strength of the part', pressure.MPa, {
    seldom: true,
    range: [1, 1500],
    hint: 'From the table of materials. A print depends on its walls and layers: make one in scrap and pull it out.',
  }),
  p_y: input('Yield stress of the part, under a washer', pressure.MPa, { seldom: true, range: [1, 2000] }),
  S_p: input('Proof stress of the screw', pressure.MPa, {
    seldom: true,
    decided: true,
    range: [50, 1500],
    basis: iso898,
  }),
  R_m: input('Tensile strength of the screw', pressure.MPa, {
    seldom: true,
    decided: true,
    range: [100, 2000],
    basis: iso898,
  }),
  q_s: input('Shear over tensile strength of the screw', ratio.one, {
    seldom: true,
    decided: true,
    range: [0.4, 1],
    basis: shearRatio,
  }),
  s_min: input('Strength wanted, as a share of the screw’s proof load', ratio.percent, {
    seldom: true,
    decided: true,
    range: [1, 300],
    basis: commonPractice,
    hint: 'Metal: 100 %, so that a screw tightened too far gives before the thread does. Plastics never get there: 15 %.',
  }),
  k_w: input('Least wall, over the outside diameter of the new thread', ratio.one, {
    seldom: true,
    decided: true,
    range: [0.05, 5],
    basis: commonPractice,
    hint: 'Metal: from 0.45 on the wall no longer widens under load (VDI 2230, dilation factor, from memory). A supplier’s engineering table asks for two screw diameters from the axis to the edge where an insert carries its full load.',
  }),
  k_t: input('Tighten to this share of the proof load', ratio.one, {
    seldom: true,
    decided: true,
    typical: 0.75,
    range: [0.05, 1],
    basis: commonPractice,
  }),
  k_m: input('Margin of the thread when tightening', ratio.one, {
    seldom: true,
    decided: true,
    range: [1, 20],
    basis: commonPractice,
    hint: 'Metal: the scatter of friction, 1.35. Plastics creep: 3.',
  }),
  K: input('Torque coefficient', ratio.one, {
    seldom: true,
    typical: 0.2,
    spread: 0.05,
    range: [0.08, 0.5],
    basis: commonPractice,
    hint: 'Dry steel 0.20, oiled about 0.15.',
  }),
  d: table('Screw diameter', isoProfile),
  P: table('Pitch', isoProfile),
  D_s: table('Screw’s least outside diameter', isoTolerances),
  E_s: table('Screw’s least pitch diameter', isoTolerances),
  E_n: table('Hole’s greatest pitch diameter', isoTolerances),
  K_n: table('Hole’s greatest minor diameter', isoTolerances),
  d_n: table('Next larger screw: diameter', isoProfile),
  P_n: table('Next larger screw: pitch', isoProfile),
  D_sn: table('Next larger screw’s least outside diameter', isoTolerances),
  E_sn: table('Next larger screw’s least pitch diameter', isoTolerances),
  E_nn: table('Next larger hole’s greatest pitch diameter', isoTolerances),
  K_nn: table('Next larger hole’s greatest minor diameter', isoTolerances),
  D_d: table(
    'Drill before the insert’s tap',
    insertHole,
    'Charts differ by 0.1 mm, for drills cut wide: the drill that comes with the kit goes before the table.',
  ),
  D_t: table('Drill before the next larger tap', iso2306),
  D_c: table('Clearance hole, medium', iso273),
  d_w: table('Outside diameter of the washer', iso7089),
  k_i: input('Insert length, in screw diameters', ratio.one, { seldom: true, decided: true, range: [1, 3] }),
  t_l: minutes('Longer screw: minutes', 10),
  t_i: minutes('Insert: minutes', 30),
  t_n: minutes('Next larger screw: minutes', 25),
  t_b: minutes('Bolt and nut: minutes', 15),
  t_r: minutes('New part: minutes', 60),
  c_l: cost('Longer screw: money', 0.5),
  c_i: cost('Insert, its tap and tool: money', 20),
  c_n: cost('Larger screw, drill and tap: money', 8),
  c_b: cost('Bolt, nut, washers, drill: money', 2),
  c_r: cost('New part: money', 25),
  r_h: cost('What an hour of work is worth', 20),
};
