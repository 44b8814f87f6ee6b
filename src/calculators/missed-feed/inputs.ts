import { density, length, mass, money, ratio, speed, time, volume } from '../../quantity/kinds';
import { cite, commonPractice } from '../../reference/citation';
import { input, type InputSpec } from '../../engine/calculator';

const delay = { by: 'delay' };
const fed = { by: 'fed' };
const none = { band: 'none' };
const some = { band: ['trim', 'left'] };
const left = { band: 'left' };

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
const share = (label: string, rest: Partial<InputSpec>): InputSpec =>
  input(label, ratio.percent, { seldom: true, basis: commonPractice, range: [0, 100], ...rest });

export const inputs = {
  Z_s: input('Nozzle height Z at the stop', length.mm, {
    range: [0.05, 2000],
    hint: 'As shown. Write it down before anything is moved.',
  }),
  H_t: input('Height of the whole, as drawn', length.mm, { range: [0.1, 2000] }),
  G: input('Gap from the last sound layer up to the nozzle', length.mm, {
    range: [0, 1000],
    tool: 'caliper',
    hint: 'At the Z where it stopped: with the depth rod, or lower the nozzle onto the part and subtract.',
    when: { by: 'gap' },
  }),
  t_d: input('Time that it ran without feed', time.min, {
    range: [0, 10000],
    hint: 'From the last time it was seen to print well to the stop, less half of what is not known, with that half after ±: between 10 and 30 min ago is 20 ± 10.',
    when: delay,
  }),
  m_f: input('Filament used until the stop', mass.g, {
    range: [0.1, 1e5],
    tool: 'kitchen-scale',
    hint: 'Spool before less spool after. A part off the bed: its own weight, supports and rim with it.',
    when: fed,
  }),
  m_t: input('Filament planned for the whole', mass.g, { range: [0.1, 1e5], when: fed }),
  k_u: input('Plastic in a layer so far, over that of the whole', ratio.one, {
    seldom: true,
    typical: 1,
    spread: 0.05,
    range: [0.05, 20],
    basis: commonPractice,
    hint: '1 where all layers are alike. A broad foot: more.',
    when: fed,
  }),
  b_m: input('Height of the thin band', length.mm, {
    range: [0, 500],
    tool: 'rule',
    hint: 'From the last layer with closed lines to the last that hangs together.',
    when: some,
  }),
  w_b: input('Width of the thinnest lines in it', length.mm, { range: [0, 4], tool: 'caliper', when: left }),
  h: input('Layer height', length.mm, { typical: 0.2, range: [0.01, 2], from: 'print.layer' }),
  h_1: input('First layer', length.mm, { typical: 0.2, range: [0.04, 2], from: 'print.first-layer' }),
  w: input('Line width', length.mm, { typical: 0.45, range: [0.1, 4], from: 'print.line-width' }),
  v: input('Print speed', speed.mm_s, { typical: 50, range: [1, 1000], basis: commonPractice, from: 'print.speed' }),
  t_L: input('Time for one layer', time.s, {
    range: [1, 20000],
    tool: 'stopwatch',
    hint: 'Or the time planned for the whole over its layers; where layers differ, say by how much after ±.',
  }),
  q_x: share('Share of the time in which plastic comes out', { typical: 85, spread: 10, range: [5, 100] }),
  d_f: input('Filament diameter', length.mm, {
    seldom: true,
    typical: 1.75,
    spread: 0.03,
    range: [1, 4],
    tool: 'caliper',
    from: 'filament.diameter',
  }),
  rho: input('Density of the plastic', density.g_cm3, {
    seldom: true,
    range: [0.5, 8],
    basis: cite('Table of materials in this app', 'density'),
  }),
  V: input('Volume of melt', volume.mm3, {
    seldom: true,
    typical: 40,
    spread: 15,
    range: [1, 1000],
    basis: commonPractice,
    from: 'extruder.melt-volume',
    when: none,
  }),
  q_o: share('Share of the melt that still ran out', { typical: 25, spread: 15, when: none }),
  q_e: share('Flow at which a line counts as missing, over the full flow', {
    decided: true,
    typical: 10,
    range: [1, 90],
    when: none,
  }),
  b_lim: input('Highest band that can be cut away in place', length.mm, {
    seldom: true,
    decided: true,
    typical: 3,
    range: [0, 100],
    basis: commonPractice,
    hint: 'With knife and file on the bed, without loosening the part.',
    when: { band: ['none', 'trim'] },
  }),
  k_b: share('Strength of the thin lines, over that of sound ones of their width', {
    typical: 75,
    spread: 20,
    when: left,
  }),
  j_c: share('New plastic on the cold top holds, of a sound layer', {
    hint: 'The top warmed by the bed and the first new layer printed slow and hot: the high end. A cold, dusty top: the low end.',
  }),
  j_g: share('A glued joint holds, of a sound layer', {
    hint: 'Sanded flat, dry, the glue meant for this plastic. Solvent welds ABS; little holds on polyamide.',
  }),
  s_n: share('Strength wanted at the seam, over a sound layer', { decided: true }),
  p_r: share('Chance that going on fails again', { decided: true, typical: 20 }),
  p_g: share('Chance that gluing fails', { decided: true, typical: 10 }),
  t_hr: minutes('Work to go on: cut, measure, restart', 25),
  t_hg: minutes('Work to glue: cut, sand, glue', 40),
  t_hn: minutes('Work to print again: clear, start', 5),
  c_s: cost('Price of a spool', 20),
  m_s: input('Plastic on a spool', mass.kg, { seldom: true, decided: true, typical: 1, range: [0.05, 50] }),
  c_g: cost('Glue, sandpaper: money', 1),
  r_m: cost('What an hour of the machine costs', 0.5),
  r_h: cost('What an hour of work is worth', 20),
};
