import { force, length, ratio, secondMoment, stiffness } from '../../quantity/kinds';
import { defineKind } from '../../quantity/unit';
import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator, formula, type When } from '../../engine/calculator';
import { advise } from './action';
import { choices, inputs } from './inputs';

/** One over the radius: unlike the radius it has a value when the screw is straight. 1 mm/m² is 1/km. */
const curvature = defineKind('curvature', [-1, 0, 0, 0, 0], {
  mm_m2: { label: 'mm/m²', factor: 1e-3, also: ['1/km'] },
  per_m: { label: '1/m', factor: 1 },
});

const circle = derived('circle through three points: R = c²/(8·s) + s/2, κ = 1/R; no approximation');
const flatArc = derived('flat arc, s = L²/(8·R): within 0.1 % for bows up to 3 mm in 300 mm over 400 mm');
const roark = cite('Roark’s Formulas for Stress and Strain', 'straight beams, concentrated load', true);
const springs = derived('two springs side by side: screw and guide share the offset');
const apart: When = { method: ['flat', 'blocks'] };
const mounted: When = { method: 'mounted' };
// Both ends clamped hold a bow straight, so a reading between them does not give it back.
const toldMounted: When = { method: 'mounted', ends: ['pinned', 'mixed', 'free'] };

export default calculator({
  cautions: [
    'Switch off and unplug before a hand goes to a screw; turn it by the coupling, by hand. Never hold or touch a turning screw.',
    'Hold the gantry up before a screw, coupling or bearing is loosened: it can drop.',
    'A screw’s threads can carry sharp swarf and burrs, and grease: wipe it with a rag, not with bare fingers, and keep grease off the print.',
  ],
  choices,
  inputs,
  formulas: [
    formula(
      'I = pi * d_3^4 / 64',
      'Second moment of area',
      secondMoment.mm4,
      cite('Machinery’s Handbook', 'properties of round sections', true),
    ),
    formula(
      'y_g = 5 * m_1 * g_n * c^4 / (384 * E * I)',
      'Sag under its own weight on the flat',
      length.mm,
      cite('Roark’s Formulas for Stress and Strain', 'straight beams, uniform load, ends supported', true),
      { method: 'flat' },
    ),
    formula(
      's = g + y_g - q',
      'Bow between the supports',
      length.mm,
      derived('the weight closes part of the gap; crests open or close it'),
      { method: 'flat', touch: 'gap' },
    ),
    formula(
      's = f_w * (g_0 + y_g)',
      'Bow between the supports',
      length.mm,
      derived('without a gap: at most what leaf and weight hide'),
      { method: 'flat', touch: 'none' },
    ),
    formula(
      's = (TIR - q) / 2',
      'Bow between the supports',
      length.mm,
      derived('a point e off the axis swings from −e to +e: TIR = 2·e'),
      { method: 'blocks' },
    ),
    formula('kappa = 8 * s / (c^2 + 4 * s^2)', 'Curvature, one over the radius', curvature.mm_m2, circle, apart),
    formula('s_L = kappa * L^2 / 8', 'Bow over the screw’s length', length.mm, flatArc, apart),
    formula(
      'y_0 = b * s_L',
      'Swing of the screw at the nut, each way, unguided',
      length.mm,
      derived('share of the bow that the ends leave'),
      apart,
    ),
    formula(
      'y_0 = (TIR - q - TIR_c) / 2',
      'Swing of the screw at the nut, each way, unguided',
      length.mm,
      derived('TIR = 2·e, less the coupling’s part'),
      mounted,
    ),
    formula(
      's_L = y_0 / b',
      'Bow over the screw’s length',
      length.mm,
      derived('share of the bow that the ends leave'),
      toldMounted,
    ),
    formula(
      'kappa = 8 * s_L / (L^2 + 4 * s_L^2)',
      'Curvature, one over the radius',
      curvature.mm_m2,
      circle,
      toldMounted,
    ),
    formula('s_r = kappa * l_r^2 / 8', 'Bow in the stated length', length.mm, flatArc, apart),
    formula('s_r = kappa * l_r^2 / 8', 'Bow in the stated length', length.mm, flatArc, toldMounted),
    formula(
      'f_L = s_L / L',
      'Bow as a share of the length',
      ratio.percent,
      derived('bow over length: the flat arc is off by four times its square'),
      apart,
    ),
    formula(
      'f_L = s_L / L',
      'Bow as a share of the length',
      ratio.percent,
      derived('bow over length: the flat arc is off by four times its square'),
      toldMounted,
    ),
    formula('k_s = 48 * E * I / L^3', 'Stiffness of the screw midway', stiffness.N_mm, roark, { ends: 'pinned' }),
    formula('k_s = 768 / 7 * E * I / L^3', 'Stiffness of the screw midway', stiffness.N_mm, roark, { ends: 'mixed' }),
    formula('k_s = 192 * E * I / L^3', 'Stiffness of the screw midway', stiffness.N_mm, roark, { ends: 'clamped' }),
    formula('k_s = 3 * E * I / L^3', 'Stiffness of the screw at its free top', stiffness.N_mm, roark, { ends: 'free' }),
    formula('F = k_s * y_0', 'Side force if the guide held the nut dead true', force.N, derived('stiffness × offset')),
    formula('r_k = k_s / (k_s + k_g)', 'Share of the swing that the carriage takes', ratio.percent, springs),
    formula('x = y_0 * r_k', 'Carriage pushed aside, each way', length.mm, springs),
    formula('w_x = 2 * x', 'Wobble on the print, peak to valley', length.mm, derived('each way, to both sides')),
    formula('w_lim = k_w * w', 'Wobble allowed', length.mm, commonPractice),
    formula(
      'p_r = P_h',
      'Period of the ridges to expect',
      length.mm,
      derived('one swing in each turn, one lead in each turn'),
    ),
    formula(
      'w_n = 2 * b * s_lim * (L / l_r)^2 * r_k',
      'Wobble from a screw right at its class limit',
      length.mm,
      derived('same curvature, flat arc: the bow grows with the square of the length'),
    ),
    formula(
      'k_t = 24 * E * I / L^3',
      'Stiffness midway with the top freed',
      stiffness.N_mm,
      derived('cantilever of half the length: 3·E·I/(L/2)³'),
      { ends: ['pinned', 'mixed', 'clamped'] },
    ),
    formula(
      'w_t = 2 * s_L * k_t / (k_t + k_g)',
      'Wobble midway with the top freed, at most',
      length.mm,
      derived('smooth bow, lower end held true by its coupling: offset κ·(L/2)²/2 = s_L'),
      { ends: ['pinned', 'mixed', 'clamped'], ...apart },
    ),
    formula(
      'w_t = 2 * s_L * k_t / (k_t + k_g)',
      'Wobble midway with the top freed, at most',
      length.mm,
      derived('smooth bow, lower end held true by its coupling: offset κ·(L/2)²/2 = s_L'),
      { ends: ['pinned', 'mixed'], ...mounted },
    ),
    formula(
      'y_y = R_e * L^2 / (6 * E * d_3)',
      'Push midway at which a bend begins to stay',
      length.mm,
      derived('F·L/4 = R_e·I/(d₃/2) and y = F·L³/(48·E·I), ends supported'),
    ),
  ],
  limits: [
    { of: 's_r', max: 's_lim', symmetric: true, label: 'Bow in the stated length', cite: commonPractice, when: apart },
    {
      of: 's_r',
      max: 's_lim',
      symmetric: true,
      label: 'Bow in the stated length',
      cite: commonPractice,
      when: toldMounted,
    },
    { of: 'f_L', max: 'f_max', symmetric: true, label: 'Bow small enough for a flat arc', cite: flatArc, when: apart },
    {
      of: 'f_L',
      max: 'f_max',
      symmetric: true,
      label: 'Bow small enough for a flat arc',
      cite: flatArc,
      when: toldMounted,
    },
    { of: 'w_x', max: 'w_lim', symmetric: true, label: 'Wobble of the carriage', cite: commonPractice },
  ],
  action: advise,
  proof:
    'Stand the dial indicator on the frame against the carriage, level with the nut, and run one lead up in eighths of a turn: the swing of the needle should be no more than the wobble allowed. Then print a tall wall: ridges spaced one lead apart should be gone; ridges at another spacing have another cause.',
  beware: [
    'Rolling and V-blocks show the screw alone. A coupling off centre, or ends turned off centre, swing the screw just as much in the machine, and a straight screw then shows a bow that is not there.',
    'To tell them apart: mark screw and coupling, loosen, turn the coupling half a turn on the screw, measure again. The high point stays with the screw: the screw. It goes over with the coupling: the coupling.',
    'V-blocks and feelers ride on the crests: an oval or off-centre crest reads as bow. Let each block span two crests or more.',
    'The flat must be truer than the bow: a surface plate or thick float glass on a firm table, checked with a straightedge.',
    'One bow per length is assumed. An S-shaped screw can read straight in the middle: read at the quarter points too.',
    'No standard was found for the straightness of trapezoidal screws; ISO 3408-3 is for ball screws only. The classes here are what sellers quote.',
  ],
  examples: [
    {
      title: 'On V-blocks: the needle swings twice the bow',
      given: {
        TIR: '0.2 mm',
        q: '0 mm ± 0',
        c: '300 mm ± 0',
        L: '400 mm ± 0',
        d_3: '5.5 mm ± 0',
        E: '206 GPa ± 0',
        k_g: '100 N/mm ± 0',
      },
      choices: { method: 'blocks' },
      expect: {
        s: [0.1, 1e-12],
        kappa: [8.888885, 1e-6],
        s_r: [0.1, 1e-7],
        s_L: [0.177778, 1e-6],
        I: [44.918, 1e-4],
        k_s: [6.93983, 1e-5],
        F: [1.23375, 1e-5],
        w_x: [0.0230737, 1e-7],
        p_r: [8, 1e-12],
      },
      verdict: 'beyond',
      source: derived('0.2/2 = 0.1; 8·0.1/(300² + 0.04) per mm; 0.1·(400/300)²; π·5.5⁴/64; 48·206000·I/400³; by hand'),
    },
    {
      title: 'On a flat: its weight hides part of the bow',
      given: {
        g: '0.08 mm',
        q: '0 mm ± 0',
        c: '300 mm ± 0',
        m_1: '300 g/m ± 0',
        L: '300 mm ± 0',
        d_3: '5.5 mm ± 0',
        E: '206 GPa ± 0',
        k_g: '100 N/mm ± 0',
      },
      choices: { method: 'flat' },
      expect: { y_g: [0.0335334, 1e-6], s: [0.1135334, 1e-6], s_r: [0.1135334, 1e-6] },
      source: derived('5·0.3·9.80665·0.3⁴/(384·206·10⁹·44.918·10⁻¹²) = 0.0335 mm; 0.08 + 0.0335'),
    },
    {
      title: 'In the machine, top free: part of the swing is the coupling’s',
      given: {
        TIR: '0.8 mm',
        TIR_c: '0.1 mm ± 0',
        q: '0 mm ± 0',
        b: '4',
        L: '300 mm ± 0',
        d_3: '5.5 mm ± 0',
        E: '206 GPa ± 0',
        k_g: '100 N/mm ± 0',
      },
      choices: { method: 'mounted', ends: 'free' },
      expect: { y_0: [0.35, 1e-12], s_L: [0.0875, 1e-12], k_s: [1.02812, 1e-5], F: [0.359843, 1e-6] },
      verdict: 'within',
      source: derived('(0.8 − 0.1)/2 = 0.35; 0.35/4; 3·206000·44.918/300³ = 1.0281 N/mm; × 0.35 mm'),
    },
    {
      title: 'A straight screw: no swing, no bow, no division by zero',
      given: { TIR: '0 mm ± 0', q: '0 mm ± 0' },
      choices: { method: 'blocks', class: 'ground' },
      expect: { kappa: [0, 0], s_L: [0, 0], F: [0, 0], w_x: [0, 0] },
      verdict: 'within',
      source: derived('all follow the bow'),
    },
  ],
});
