import {
  area,
  consistency,
  count,
  flow,
  force,
  length,
  mass,
  pressure,
  ratio,
  shearRate,
  speed,
  time,
  volume,
} from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const powerLaw = cite('Bird, Stewart and Lightfoot, Transport Phenomena', '§8.3, power law in a tube', true);
const wallRate = cite('Bird, Armstrong and Hassager, Dynamics of Polymeric Liquids', 'ch. 4, wall shear rate', true);
const cone = cite('Steffe, Rheological Methods in Food Process Engineering', '§4.4.1, shear term of converging flow');
const capstan = cite('Machinery’s Handbook', 'belt friction: F = F₀ · e^(μΘ)', true);
const nozzles = derived('power law at both bores; K cancels, so its spread does too');
const sameLand = { land: 'same' };
const scaledLand = { land: 'scaled' };
const table = { source: 'table' };
const pushed = { source: 'force' };
const tube = { drive: 'tube' };
const head = { drive: 'head' };

/** From the line being printed to the length to pull back, the other nozzle, the bleeding time and the test piece. */
export const formulas = [
  formula('A_f = pi * d_f^2 / 4', 'Cross-section of the filament', area.mm2, derived('area of a circle')),
  formula(
    'Q = w * h * v',
    'Flow',
    flow.mm3_s,
    derived('rectangle of line width and layer: lines laid side by side without gaps'),
  ),
  formula(
    'q_r = (1 - pi / 4) * h / w',
    'Less flow than that for a lone line with half-round edges',
    ratio.percent,
    derived('two half circles of diameter h in place of the two ends of the rectangle'),
  ),
  formula('v_f = Q / A_f', 'Feed speed of the filament', speed.mm_s, derived('volume in = volume out')),
  formula('r = d / 2', 'Radius of the bore', length.mm, derived('half the bore')),
  formula(
    'gamma_w = (3 * n + 1) / (4 * n) * 4 * Q / (pi * r^3)',
    'Shear rate at the wall of the land',
    shearRate.per_s,
    wallRate,
  ),
  formula(
    'K_e = K * f_K^beta',
    'Consistency used',
    consistency.Pa_sn,
    derived('even on a scale of ratios between K / f and K · f'),
    table,
  ),
  formula(
    'K_e = F_m / A_f / ((gamma_w * one_s)^n * (2 * l / r + f_c * 2 / (3 * n * tan(alpha)) * (1 - (2 * r / d_0)^(3 * n))))',
    'Consistency that explains the push',
    consistency.Pa_sn,
    derived('the pressures of land and cone below, solved for K'),
    pushed,
  ),
  formula('dp_l = 2 * K_e * l / r * (gamma_w * one_s)^n', 'Pressure over the land', pressure.MPa, powerLaw),
  formula(
    'dp_c = f_c * 2 * K_e / (3 * n * tan(alpha)) * (gamma_w * one_s)^n * (1 - (2 * r / d_0)^(3 * n))',
    'Pressure over the cone, shear times a factor for stretching',
    pressure.MPa,
    cone,
  ),
  formula('dp = dp_l + dp_c', 'Pressure in the melt', pressure.MPa, derived('land and cone in line')),
  formula('F = dp * A_f', 'Force on the filament', force.N, derived('pressure on its cross-section')),
  formula('F_g = F * exp(mu_t * Theta)', 'Push of the drive, with the friction of the tube', force.N, capstan, tube),
  formula('F_g = F', 'Push of the drive', force.N, derived('no tube between'), head),
  formula(
    's_f = dp * L / E * (1 + 4 * exp(mu_t * Theta / 2) + exp(mu_t * Theta)) / 6',
    'Filament compressed',
    length.mm,
    derived(
      'Hooke’s law, ΔL = F · L / (E · A) with F = Δp · A, under the mean of a push that grows evenly along the tube’s bends to e^(μΘ) times: Simpson’s rule, 0.5 % high at μΘ = 2, 2 % at 3, true at 0',
    ),
    tube,
  ),
  formula(
    's_f = dp * L / E',
    'Filament compressed',
    length.mm,
    derived('Hooke’s law, ΔL = F · L / (E · A) with F = Δp · A'),
    head,
  ),
  formula(
    's_t = Theta * (D_t - d_f)',
    'Slack of the filament in the tube',
    length.mm,
    derived(
      'centre lines along the outer and the inner wall, radii R ± (D − d) / 2: the arcs differ by Θ (D − d), whatever R',
    ),
    tube,
  ),
  formula(
    's_m = dp * V / (B * A_f)',
    'Melt compressed, as filament',
    length.mm,
    derived('bulk modulus: ΔV = V Δp / B, over the cross-section'),
  ),
  formula(
    'x_r = s_f + s_t + s_m + s_b',
    'Length to pull back',
    length.mm,
    derived('what is stored between gear and tip'),
    tube,
  ),
  formula(
    'x_r = s_f + s_m + s_b',
    'Length to pull back',
    length.mm,
    derived('what is stored between gear and tip'),
    head,
  ),
  formula('x_lo = x_r - a_lo', 'Band, lower end', length.mm, commonPractice),
  formula('x_hi = x_r + a_hi', 'Band, upper end', length.mm, commonPractice),
  formula('x_d = x_set - x_r', 'Set length less the computed one', length.mm, derived('difference')),
  formula('t_x = x_set / v_x', 'Time the pull-back takes', time.s, derived('way over speed')),
  formula(
    'k_q = (d / d_2)^(3 * n + 1)',
    'Other nozzle, same flow: pressure over the land, times',
    ratio.one,
    nozzles,
    sameLand,
  ),
  formula(
    'k_q = (d / d_2)^(3 * n)',
    'Other nozzle, same flow: pressure over the land, times',
    ratio.one,
    nozzles,
    scaledLand,
  ),
  formula(
    'k_v = (d / d_2)^(n + 1)',
    'Other nozzle, same speed, line and layer in proportion: pressure over the land, times',
    ratio.one,
    nozzles,
    sameLand,
  ),
  formula(
    'k_v = (d / d_2)^n',
    'Other nozzle, same speed, line and layer in proportion: pressure over the land, times',
    ratio.one,
    nozzles,
    scaledLand,
  ),
  // The root of a square: without a value where the other nozzle is wider than the bore above its cone.
  formula(
    'k_c = (d / d_2)^(3 * n) * sqrt(1 - (d_2 / d_0)^(3 * n))^2 / (1 - (d / d_0)^(3 * n))',
    'Other nozzle, same flow: pressure over the cone, times',
    ratio.one,
    nozzles,
  ),
  formula(
    'x_q = x_r + (s_f + s_m) * ((dp_l * k_q + dp_c * k_c) / dp - 1)',
    'Other nozzle, same flow: length to pull back',
    length.mm,
    derived('what the pressure stores grows with it; slack and backlash do not'),
  ),
  formula(
    'x_v = x_r + (s_f + s_m) * ((dp_l * k_v + dp_c * k_c * (d_2 / d)^(2 * n)) / dp - 1)',
    'Other nozzle, same speed: length to pull back',
    length.mm,
    derived('the same, with the flow as the square of the bore'),
  ),
  formula(
    't_b = (s_f + s_m) / v_f * n / (1 - n) * (phi^((n - 1) / n) - 1)',
    'Time for the pressure to fall to that share, nothing pulled back',
    time.s,
    derived('dp/dt = −Q / C, Q as p^(1/n), C = stored volume over pressure; integrated'),
  ),
  formula('q_b = phi^(1 / n)', 'Share of the flow left then', ratio.percent, powerLaw),
  formula('gamma_b = gamma_w * q_b', 'Shear rate left then', shearRate.per_s, derived('shear rate goes with flow')),
  formula(
    'x_b = v_t * t_b',
    'Travel in that time: the nozzle oozes over this length',
    length.mm,
    derived('speed × time'),
  ),
  formula(
    't_1 = pi * d^3 / (6 * Q)',
    'Time for a drop as wide as the bore, nothing pulled back',
    time.s,
    derived('volume of a ball over the flow at the moment of stopping, which only falls'),
  ),
  formula('x_1 = v_t * t_1', 'Travel before that drop: shorter ones hardly show', length.mm, derived('speed × time')),
  formula(
    'V_o = A_f * (s_f + s_m) * (1 - phi)',
    'Plastic that oozes in the bleeding time',
    volume.mm3,
    derived('stored volume falls with the pressure'),
  ),
  formula(
    'd_s = sqrt(4 * V_o / (pi * g))',
    'Hair it draws across the planned gap, thickness',
    length.mm,
    derived('that volume as a round thread of the gap’s length'),
  ),
  formula('b_min = 4 * w', 'Least side of a block: four lines', length.mm, commonPractice),
  formula(
    'N_t = floor(h_b / h)',
    'Layers of the planned piece, two travels in each',
    count.one,
    derived('height over layer'),
  ),
  formula('m_p = 2 * rho * b^2 * h_b', 'Plastic for the planned piece, solid', mass.g, derived('two blocks')),
] as const;
