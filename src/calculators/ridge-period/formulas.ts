import { area, count, length, perLength, ratio, volume } from '../../quantity/kinds';
import { formula, cite, derived } from '../../engine/calculator';

const up = { way: 'up' } as const;
const along = { way: 'along' } as const;
const screw = { way: 'up', lift: 'screw' } as const;
const belt = { way: 'up', lift: 'belt' } as const;

const handbookLead = cite('Machinery’s Handbook, 29th edition (2012)', 'powerScrewsLead', true);
const teeth = cite('ISO 5296:2012, synchronous belt drives', 'pitchGeometryTooth', true);
const turnOfPulley = cite('ISO 5296:2012, synchronous belt drives', 'pitchDiameterPitch', true);
const steppers = cite('IEC 60034-20-1:2002, stepping motors', 'stepAngleSubdivision', true);
const circumference = derived('circumferenceDiameter');
const atTheCords = derived('beltBendsAbout');
const apart = derived('ratioPeriodsLess');
const whole = derived('nearestWholeNumber');
const oddLayer = derived('heightsRoundedWhole');
const sampling = cite(
  'Shannon, Communication in the Presence of Noise, Proceedings of the IRE 37 (1949) 10',
  'samplingSamplesPeriod',
  true,
);
const volumeKept = derived('plasticFedPlastic');

export const formulas = [
  formula('P_m = (L + x) / N', length.mm, derived('lengthOverNumber'), { by: 'count' }),
  formula('P_m = P_w', length.mm, derived('taken'), { by: 'direct' }),
  formula('P = P_m / (1 - s)', length.mm, derived('definitionLinearShrinkage')),

  formula('p_lead = P_h', length.mm, handbookLead, screw),
  formula('p_thread = P_h / n_s', length.mm, handbookLead, screw),
  formula('p_motor = P_h / i_g', length.mm, derived('leadOverGear'), screw),
  formula('q = P_h * theta_s / rev / i_g', length.mm, steppers, screw),
  formula('p_tooth = p', length.mm, teeth, belt, 'p_tooth_zBeltTooth'),
  formula('p_pulley = p * z', length.mm, turnOfPulley, belt, 'p_pulley_zPinionTurn'),
  formula('p_motor = p * z / i_g', length.mm, derived('turnPinionOver'), belt),
  formula('p_idler = pi * (d_z + 2 * a)', length.mm, atTheCords, belt, 'p_idler_idlerZBelt'),
  formula('q = p * z * theta_s / rev / i_g', length.mm, steppers, belt),
  formula('p_min = 2 * h', length.mm, sampling, up),
  formula('n = h / q', ratio.one, derived('heightOverHeight'), up),
  formula('n_w = round(n)', count.one, whole, up),
  formula('k_odd = abs(n - n_w) / h', perLength.per_mm, oddLayer, up),

  formula('p_tooth = p_b', length.mm, teeth, along, 'p_tooth_beltTooth'),
  formula('p_pulley = p_b * z_b', length.mm, turnOfPulley, along, 'p_pulley_motorPulleyTurn'),
  formula('p_idler = pi * (d_i + 2 * a)', length.mm, atTheCords, along, 'p_idler_idlerTurn'),
  formula('p_step = p_b * z_b * theta_b / rev', length.mm, steppers, along),
  formula('p_cycle = 4 * p_step', length.mm, steppers, along),

  formula('p_wheel = 2 * pi * r_w', length.mm, circumference),
  formula('A_f = pi * d_f ^ 2 / 4', area.mm2, derived('areaCircle')),
  formula('V_g = pi * d_g * A_f', volume.mm3, derived('circumferenceSection')),
  formula('p_gear = V_g / (k_A * w * l_L)', length.mm, volumeKept, up, 'p_gear_feedGearTurn'),
  formula('p_gear = V_g / (k_A * w * h)', length.mm, volumeKept, along, 'p_gear_feedGearTurn2'),
  formula('p_heat = h * t_c / t_L', length.mm, derived('layersCycleHeight'), up, 'p_heat_heaterCycleHeight'),
  formula('p_heat = v * t_c', length.mm, derived('speedTime'), along, 'p_heat_heaterCycleAlong'),
  formula('p_day = h * 86400 * one_s / t_L', length.mm, derived('layersDayHeight'), up),

  formula('e_lead = P / p_lead - 1', ratio.percent, apart, screw),
  formula('e_thread = P / p_thread - 1', ratio.percent, apart, screw),
  formula('e_motor = P / p_motor - 1', ratio.percent, apart, up),
  formula('e_odd = P * k_odd - 1', ratio.percent, apart, up),
  formula('e_tooth = P / p_tooth - 1', ratio.percent, apart, belt),
  formula('e_tooth = P / p_tooth - 1', ratio.percent, apart, along),
  formula('e_pulley = P / p_pulley - 1', ratio.percent, apart, belt, 'e_pulley_ridgesAgainstTurn'),
  formula('e_pulley = P / p_pulley - 1', ratio.percent, apart, along, 'e_pulley_ridgesAgainstTurn2'),
  formula('e_idler = P / p_idler - 1', ratio.percent, apart, belt),
  formula('e_idler = P / p_idler - 1', ratio.percent, apart, along),
  formula('e_step = P / p_step - 1', ratio.percent, apart, along),
  formula('e_cycle = P / p_cycle - 1', ratio.percent, apart, along),
  formula('e_wheel = P / p_wheel - 1', ratio.percent, apart),
  formula('e_gear = P / p_gear - 1', ratio.percent, apart),
  formula('e_heat = P / p_heat - 1', ratio.percent, apart),
  formula('e_day = P / p_day - 1', ratio.percent, apart, up),
] as const;
