import { area, count, length, perLength, ratio, volume } from '../../quantity/kinds';
import { cite, derived } from '../../reference/citation';
import { formula } from '../../engine/calculator';

const up = { way: 'up' } as const;
const along = { way: 'along' } as const;
const screw = { way: 'up', lift: 'screw' } as const;
const belt = { way: 'up', lift: 'belt' } as const;

const handbookLead = cite('Machinery’s Handbook', 'power screws: lead = pitch × starts', true);
const teeth = cite('ISO 5296 and ISO 13050, synchronous belt drives', 'pitch geometry: one tooth is one pitch', true);
const turnOfPulley = cite(
  'ISO 5296 and ISO 13050, synchronous belt drives',
  'pitch diameter = pitch × teeth / π: one turn moves pitch × teeth',
  true,
);
const steppers = cite('IEC 60034-20-1, stepping motors', 'step angle and its subdivision', true);
const circumference = cite('Euclid’s circle', 'circumference = π × diameter', true);
const atTheCords = derived('a belt bends about its cords: circumference of the circle on which they run');
const apart = derived('ratio of the two periods, less one');
const whole = derived('nearest whole number');
const oddLayer = derived(
  'heights are rounded to whole steps: the part of a step left over in each layer adds up to one step in so many layers',
);
const sampling = cite(
  'Shannon, Communication in the Presence of Noise (1949)',
  'sampling: two samples a period at least',
  true,
);
const volumeKept = derived('plastic fed = plastic laid');

export const formulas = [
  formula('P_m = (L + x) / N', 'Ridge period as measured', length.mm, derived('length over number'), { by: 'count' }),
  formula('P_m = P_w', 'Ridge period as measured', length.mm, derived('taken as it is'), { by: 'direct' }),
  formula(
    'P = P_m / (1 - s)',
    'Ridge period as the machine moved it',
    length.mm,
    derived('definition of linear shrinkage'),
  ),

  formula('p_lead = P_h', 'Screw, one turn', length.mm, handbookLead, screw),
  formula('p_thread = P_h / n_s', 'Screw, one thread: its pitch', length.mm, handbookLead, screw),
  formula('p_motor = P_h / i_g', 'Z motor, one turn', length.mm, derived('lead over gear ratio'), screw),
  formula('q = P_h * theta_s / rev / i_g', 'Travel of one full step', length.mm, steppers, screw),
  formula('p_tooth = p', 'Z belt, one tooth', length.mm, teeth, belt),
  formula('p_pulley = p * z', 'Z pinion, one turn', length.mm, turnOfPulley, belt),
  formula('p_motor = p * z / i_g', 'Z motor, one turn', length.mm, derived('turn of the pinion over gear ratio'), belt),
  formula('p_idler = pi * (d_z + 2 * a)', 'Idler of the Z belt, one turn', length.mm, atTheCords, belt),
  formula('q = p * z * theta_s / rev / i_g', 'Travel of one full step', length.mm, steppers, belt),
  formula('p_min = 2 * h', 'Shortest spacing that layers can show', length.mm, sampling, up),
  formula('n = h / q', 'Full steps in one layer', ratio.one, derived('height over height of one'), up),
  formula('n_w = round(n)', 'Nearest whole number of full steps', count.one, whole, up),
  formula('k_odd = abs(n - n_w) / h', 'Odd layers per height, from rounding', perLength.per_mm, oddLayer, up),

  formula('p_tooth = p_b', 'Belt, one tooth', length.mm, teeth, along),
  formula('p_pulley = p_b * z_b', 'Motor pulley, one turn', length.mm, turnOfPulley, along),
  formula('p_idler = pi * (d_i + 2 * a)', 'Idler, one turn', length.mm, atTheCords, along),
  formula('p_step = p_b * z_b * theta_s / rev', 'Motor, one full step', length.mm, steppers, along),
  formula('p_cycle = 4 * p_step', 'Motor, four full steps: one cycle of its current', length.mm, steppers, along),

  formula('p_wheel = 2 * pi * r_w', 'Guide wheel, one turn', length.mm, circumference),
  formula('A_f = pi * d_f ^ 2 / 4', 'Section of the filament', area.mm2, derived('area of a circle')),
  formula(
    'V_g = pi * d_g * A_f',
    'Plastic fed in one turn of the gear',
    volume.mm3,
    derived('circumference × section'),
  ),
  formula('p_gear = V_g / (k_A * w * l_L)', 'Feed gear, one turn, in height', length.mm, volumeKept, up),
  formula('p_gear = V_g / (k_A * w * h)', 'Feed gear, one turn, along the line', length.mm, volumeKept, along),
  formula(
    'p_heat = h * t_c / t_L',
    'Heater, one cycle, in height',
    length.mm,
    derived('layers in a cycle × height'),
    up,
  ),
  formula('p_heat = v * t_c', 'Heater, one cycle, along the line', length.mm, derived('speed × time'), along),
  formula(
    'p_day = h * 86400 * one_s / t_L',
    'Day and night, in height',
    length.mm,
    derived('layers in a day × height'),
    up,
  ),

  formula('e_lead = P / p_lead - 1', 'Ridges against the turn of the screw', ratio.percent, apart, screw),
  formula('e_thread = P / p_thread - 1', 'Ridges against the screw’s pitch', ratio.percent, apart, screw),
  formula('e_motor = P / p_motor - 1', 'Ridges against the turn of the Z motor', ratio.percent, apart, up),
  formula('e_odd = P * k_odd - 1', 'Ridges against the odd layers of rounding', ratio.percent, apart, up),
  formula('e_tooth = P / p_tooth - 1', 'Ridges against the belt’s tooth', ratio.percent, apart, belt),
  formula('e_tooth = P / p_tooth - 1', 'Ridges against the belt’s tooth', ratio.percent, apart, along),
  formula('e_pulley = P / p_pulley - 1', 'Ridges against the turn of the pinion', ratio.percent, apart, belt),
  formula('e_pulley = P / p_pulley - 1', 'Ridges against the turn of the pulley', ratio.percent, apart, along),
  formula('e_idler = P / p_idler - 1', 'Ridges against the turn of the idler', ratio.percent, apart, belt),
  formula('e_idler = P / p_idler - 1', 'Ridges against the turn of the idler', ratio.percent, apart, along),
  formula('e_step = P / p_step - 1', 'Ridges against one full step', ratio.percent, apart, along),
  formula('e_cycle = P / p_cycle - 1', 'Ridges against four full steps', ratio.percent, apart, along),
  formula('e_wheel = P / p_wheel - 1', 'Ridges against the turn of a guide wheel', ratio.percent, apart),
  formula('e_gear = P / p_gear - 1', 'Ridges against the turn of the feed gear', ratio.percent, apart),
  formula('e_heat = P / p_heat - 1', 'Ridges against the heater’s cycle', ratio.percent, apart),
  formula('e_day = P / p_day - 1', 'Ridges against day and night', ratio.percent, apart, up),
] as const;
