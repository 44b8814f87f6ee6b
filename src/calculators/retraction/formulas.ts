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
import { commonPractice } from '../../reference/citation';
import { formula, cite, derived } from '../../engine/calculator';

const powerLaw = cite('Bird, Stewart and Lightfoot, Transport Phenomena, 2nd edition (2002)', 'powerLawTube', true);
const wallRate = cite(
  'Bird, Armstrong and Hassager, Dynamics of Polymeric Liquids, volume 1, 2nd edition (1987)',
  'chWallShear',
  true,
);
const cone = cite('Steffe, Rheological Methods in Food Process Engineering, 2nd edition (1996)', 'shearTermConverging');
const capstan = cite('Machinery’s Handbook, 29th edition (2012)', 'beltFrictionF', true);
const nozzles = derived('powerLawBoth');
const sameLand = { land: 'same' };
const scaledLand = { land: 'scaled' };
const table = { source: 'table' };
const pushed = { source: 'force' };
const tube = { drive: 'tube' };
const head = { drive: 'head' };

/** From the line being printed to the length to pull back, the other nozzle, the bleeding time and the test piece. */
export const formulas = [
  formula('A_f = pi * d_f^2 / 4', area.mm2, derived('areaCircle')),
  formula('Q = w * h * v', flow.mm3_s, derived('rectangleLineWidth')),
  formula('q_r = (1 - pi / 4) * h / w', ratio.percent, derived('halfCirclesDiameter')),
  formula('v_f = Q / A_f', speed.mm_s, derived('volumeVolumeOut')),
  formula('r = d / 2', length.mm, derived('halfBore')),
  formula('gamma_w = (3 * n + 1) / (4 * n) * 4 * Q / (pi * r^3)', shearRate.per_s, wallRate),
  formula('K_e = K * f_K^beta', consistency.Pa_sn, derived('evenScaleRatios'), table, 'K_e_consistencyUsed'),
  formula(
    'K_e = F_m / A_f / ((gamma_w * one_s)^n * (2 * l / r + f_c * 2 / (3 * n * tan(alpha)) * (1 - (2 * r / d_0)^(3 * n))))',
    consistency.Pa_sn,
    derived('pressuresLandCone'),
    pushed,
    'K_e_consistencyExplainsPush',
  ),
  formula('dp_l = 2 * K_e * l / r * (gamma_w * one_s)^n', pressure.MPa, powerLaw),
  formula(
    'dp_c = f_c * 2 * K_e / (3 * n * tan(alpha)) * (gamma_w * one_s)^n * (1 - (2 * r / d_0)^(3 * n))',
    pressure.MPa,
    cone,
  ),
  formula('dp = dp_l + dp_c', pressure.MPa, derived('landConeLine')),
  formula('F = dp * A_f', force.N, derived('pressureCrossSection')),
  formula('F_g = F * exp(mu_t * Theta)', force.N, capstan, tube, 'F_g_pushDriveFriction'),
  formula('F_g = F', force.N, derived('tubeBetween'), head, 'F_g_pushDrive'),
  formula(
    's_f = dp * L / E * (1 + 4 * exp(mu_t * Theta / 2) + exp(mu_t * Theta)) / 6',
    length.mm,
    derived('hookesLawL'),
    tube,
  ),
  formula('s_f = dp * L / E', length.mm, derived('hookesLawL2'), head),
  formula('s_t = Theta * (D_t - d_f)', length.mm, derived('centreLinesAlong'), tube),
  formula('s_m = dp * V / (B * A_f)', length.mm, derived('bulkModulusV')),
  formula('x_r = s_f + s_t + s_m + s_b', length.mm, derived('storedBetweenGear'), tube),
  formula('x_r = s_f + s_m + s_b', length.mm, derived('storedBetweenGear'), head),
  formula('x_lo = x_r - a_lo', length.mm, commonPractice),
  formula('x_hi = x_r + a_hi', length.mm, commonPractice),
  formula('x_d = x_set - x_r', length.mm, derived('difference')),
  formula('dx_p = x_set - x_p', length.mm, derived('difference'), table),
  formula('t_x = x_set / v_x', time.s, derived('wayOverSpeed')),
  formula('k_q = (d / d_2)^(3 * n + 1)', ratio.one, nozzles, sameLand),
  formula('k_q = (d / d_2)^(3 * n)', ratio.one, nozzles, scaledLand),
  formula('k_v = (d / d_2)^(n + 1)', ratio.one, nozzles, sameLand),
  formula('k_v = (d / d_2)^n', ratio.one, nozzles, scaledLand),
  // The root of a square: without a value where the other nozzle is wider than the bore above its cone.
  formula('k_c = (d / d_2)^(3 * n) * sqrt(1 - (d_2 / d_0)^(3 * n))^2 / (1 - (d / d_0)^(3 * n))', ratio.one, nozzles),
  formula('x_q = x_r + (s_f + s_m) * ((dp_l * k_q + dp_c * k_c) / dp - 1)', length.mm, derived('pressureStoresGrows')),
  formula(
    'x_v = x_r + (s_f + s_m) * ((dp_l * k_v + dp_c * k_c * (d_2 / d)^(2 * n)) / dp - 1)',
    length.mm,
    derived('sameFlowSquare'),
  ),
  formula('t_b = (s_f + s_m) / v_f * n / (1 - n) * (phi^((n - 1) / n) - 1)', time.s, derived('dpDtQ')),
  formula('q_b = phi^(1 / n)', ratio.percent, powerLaw),
  formula('gamma_b = gamma_w * q_b', shearRate.per_s, derived('shearRateGoes')),
  formula('x_b = v_t * t_b', length.mm, derived('speedTime')),
  formula('t_1 = pi * d^3 / (6 * Q)', time.s, derived('volumeBallOver')),
  formula('x_1 = v_t * t_1', length.mm, derived('speedTime')),
  formula('V_o = A_f * (s_f + s_m) * (1 - phi)', volume.mm3, derived('storedVolumeFalls')),
  formula('d_s = sqrt(4 * V_o / (pi * g))', length.mm, derived('volumeRoundThread')),
  formula('b_min = 4 * w', length.mm, commonPractice),
  formula('N_t = floor(h_b / h)', count.one, derived('heightOverLayer')),
  formula('m_p = 2 * rho * b^2 * h_b', mass.g, derived('teeth')),
] as const;
