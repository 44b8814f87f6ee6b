/** What the check “Thread repair” asks for. */
const OWN = 'Set your own.';

const en = {
  L_r: {
    label: 'Reach of the screw into the hole',
    hint: 'Length below the head, less what it clamps.',
  },
  L_e: {
    label: 'Good thread left, in the screw’s reach',
    hint: 'Reach of the screw less the depth at which it first bites. 0 where it turns freely all the way.',
  },
  L_b: {
    label: 'Good thread deeper than the screw’s tip',
    hint: 'Screw in a longer screw by hand until it stops, and measure how much farther it goes.',
  },
  L_h: {
    label: 'Depth of the hole; through hole: thickness',
    hint: 'To the shoulder of the drilled hole, with the depth rod.',
  },
  w: {
    label: 'Least wall beside the thread',
    hint: 'From the edge of the threaded hole to the nearest outside face, slot or other hole.',
  },
  tau: {
    label: 'Shear strength of the part',
    hint: 'From the table of materials. A print depends on its walls and layers: make one in scrap and pull it out.',
  },
  p_y: {
    label: 'Yield stress of the part, under a washer',
  },
  S_p: {
    label: 'Proof stress of the screw',
  },
  R_m: {
    label: 'Tensile strength of the screw',
  },
  q_s: {
    label: 'Shear over tensile strength of the screw',
  },
  s_min: {
    label: 'Strength wanted, as a share of the screw’s proof load',
    hint: 'Metal: 100 %, so that a screw tightened too far gives before the thread does. Plastics never get there: 15 %.',
  },
  k_w: {
    label: 'Least wall, over the outside diameter of the new thread',
    hint: 'Metal: from 0.45 on the wall no longer widens under load (VDI 2230, dilation factor, from memory). Common practice: two screw diameters from the axis to the edge where an insert carries its full load.',
  },
  k_t: {
    label: 'Tighten to this share of the proof load',
  },
  k_m: {
    label: 'Margin of the thread when tightening',
    hint: 'Metal: the scatter of friction, 1.35. Plastics creep: 3.',
  },
  K: {
    label: 'Torque coefficient',
    hint: 'Dry steel 0.20, oiled about 0.15.',
  },
  d: {
    label: 'Screw diameter',
  },
  P: {
    label: 'Pitch',
  },
  D_s: {
    label: 'Screw’s least outside diameter',
  },
  E_s: {
    label: 'Screw’s least pitch diameter',
  },
  E_n: {
    label: 'Hole’s greatest pitch diameter',
  },
  K_n: {
    label: 'Hole’s greatest minor diameter',
  },
  d_n: {
    label: 'Next larger screw: diameter',
  },
  P_n: {
    label: 'Next larger screw: pitch',
  },
  D_sn: {
    label: 'Next larger screw’s least outside diameter',
  },
  E_sn: {
    label: 'Next larger screw’s least pitch diameter',
  },
  E_nn: {
    label: 'Next larger hole’s greatest pitch diameter',
  },
  K_nn: {
    label: 'Next larger hole’s greatest minor diameter',
  },
  D_d: {
    label: 'Drill before the insert’s tap',
    hint: 'Charts differ by 0.1 mm, for drills cut wide: the drill that comes with the kit goes before the table.',
  },
  D_t: {
    label: 'Drill before the next larger tap',
  },
  D_c: {
    label: 'Clearance hole, medium',
  },
  d_w: {
    label: 'Outside diameter of the washer',
  },
  k_i: {
    label: 'Insert length, in screw diameters',
  },
  D_h: {
    label: 'Hole for the heat-set insert',
    hint: 'The insert’s own sheet goes before the table.',
  },
  L_s: {
    label: 'Length of the heat-set insert',
  },
  q_h: {
    label: 'Knurls’ share of the hole’s shear strength',
  },
  s_w: {
    label: 'Nut: width across flats',
  },
  m_w: {
    label: 'Nut: height',
  },
  m_t: {
    label: 'Thin nut: height',
  },
  p_n: {
    label: 'Proof stress of the thin nut',
  },
  t_l: {
    label: 'Longer screw: minutes',
  },
  t_i: {
    label: 'Insert: minutes',
  },
  t_n: {
    label: 'Next larger screw: minutes',
  },
  t_b: {
    label: 'Bolt and nut: minutes',
  },
  t_h: {
    label: 'Heat-set insert: minutes',
  },
  t_k: {
    label: 'Captive nut: minutes',
  },
  t_r: {
    label: 'New part: minutes',
  },
  c_l: {
    label: 'Longer screw: money',
    hint: OWN,
  },
  c_i: {
    label: 'Insert, its tap and tool: money',
    hint: OWN,
  },
  c_n: {
    label: 'Larger screw, drill and tap: money',
    hint: OWN,
  },
  c_b: {
    label: 'Bolt, nut, washers, drill: money',
    hint: OWN,
  },
  c_h: {
    label: 'Heat-set inserts, their tip: money',
    hint: OWN,
  },
  c_k: {
    label: 'Captive nut: money',
    hint: OWN,
  },
  c_r: {
    label: 'New part: money',
    hint: OWN,
  },
  r_h: {
    label: 'What an hour of work is worth',
    hint: OWN,
  },
};
export default en;
