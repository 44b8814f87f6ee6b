import { defineKind } from './unit';
import { dimensionless } from './dimension';

/*
 * Factors to SI. Inch, pound and standard gravity are exact by definition (NIST SP 811, appendix B.8;
 * ISO 80000-4); test/outside/units.test.ts holds every factor against Debian's `units` or mathjs.
 */
const INCH = 0.0254;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const LBF = POUND * GRAVITY;

export const count = defineKind('count', dimensionless, { one: { label: '', factor: 1 } }, true);

/** In whatever coin the person reckons. */
export const money = defineKind('money', dimensionless, { one: { label: '', factor: 1 } });

export const ratio = defineKind('ratio', dimensionless, {
  one: { label: '', factor: 1 },
  percent: { label: '%', factor: 0.01, also: ['percent', 'pct'] },
});

export const angle = defineKind('angle', dimensionless, {
  deg: { label: '°', factor: Math.PI / 180, also: ['degree', 'degrees'] },
  rad: { label: 'rad', factor: 1 },
  turn: { label: 'turn', factor: 2 * Math.PI, also: ['turns', 'rev'] },
  arcmin: { label: '′', factor: Math.PI / 10800, also: ["'", '’', 'min'] },
});

export const slope = defineKind('slope', dimensionless, {
  mm_m: { label: 'mm/m', factor: 1e-3 },
  percent: { label: '%', factor: 0.01 },
  in_ft: { label: 'in/ft', factor: 1 / 12 },
});

export const length = defineKind('length', [1, 0, 0, 0, 0], {
  mm: { label: 'mm', factor: 1e-3 },
  um: { label: 'µm', factor: 1e-6, also: ['micron', 'microns'] },
  cm: { label: 'cm', factor: 1e-2 },
  m: { label: 'm', factor: 1 },
  in: { label: 'in', factor: INCH, also: ['"', '″', '”', "''", '′′', '’’', 'inch', 'inches'] },
  thou: { label: 'thou', factor: INCH / 1000, also: ['mil', 'mils'] },
  ft: { label: 'ft', factor: 12 * INCH, also: ["'", '′', '’', 'feet', 'foot'] },
});

export const area = defineKind('area', [2, 0, 0, 0, 0], {
  mm2: { label: 'mm²', factor: 1e-6, also: ['mm^2'] },
  in2: { label: 'in²', factor: INCH ** 2, also: ['in^2'] },
});

export const volume = defineKind('volume', [3, 0, 0, 0, 0], {
  mm3: { label: 'mm³', factor: 1e-9, also: ['mm^3'] },
  cm3: { label: 'cm³', factor: 1e-6, also: ['cm^3', 'ml'] },
});

export const secondMoment = defineKind('second moment of area', [4, 0, 0, 0, 0], {
  mm4: { label: 'mm⁴', factor: 1e-12, also: ['mm^4'] },
});

export const mass = defineKind('mass', [0, 1, 0, 0, 0], {
  g: { label: 'g', factor: 1e-3 },
  kg: { label: 'kg', factor: 1 },
  oz: { label: 'oz', factor: POUND / 16 },
  lb: { label: 'lb', factor: POUND, also: ['lbs'] },
});

export const time = defineKind('time', [0, 0, 1, 0, 0], {
  s: { label: 's', factor: 1, also: ['sec'] },
  ms: { label: 'ms', factor: 1e-3 },
  min: { label: 'min', factor: 60 },
  h: { label: 'h', factor: 3600 },
});

export const frequency = defineKind('frequency', [0, 0, -1, 0, 0], {
  Hz: { label: 'Hz', factor: 1 },
  kHz: { label: 'kHz', factor: 1e3 },
});

export const shearRate = defineKind('shear rate', [0, 0, -1, 0, 0], {
  per_s: { label: '1/s', factor: 1, also: ['s^-1', 's⁻¹'] },
});

/** Steps, pulses or grooves per length. */
export const perLength = defineKind('number per length', [-1, 0, 0, 0, 0], {
  per_mm: { label: '1/mm', factor: 1e3, also: ['/mm', 'per mm'] },
  per_in: { label: '1/in', factor: 1 / INCH, also: ['/in', 'per in'] },
});

export const speed = defineKind('speed', [1, 0, -1, 0, 0], {
  mm_s: { label: 'mm/s', factor: 1e-3 },
  mm_min: { label: 'mm/min', factor: 1e-3 / 60 },
  m_s: { label: 'm/s', factor: 1 },
  in_s: { label: 'in/s', factor: INCH },
});

export const acceleration = defineKind('acceleration', [1, 0, -2, 0, 0], {
  mm_s2: { label: 'mm/s²', factor: 1e-3, also: ['mm/s^2', 'mm/s2'] },
  m_s2: { label: 'm/s²', factor: 1, also: ['m/s^2', 'm/s2'] },
});

export const flow = defineKind('flow', [3, 0, -1, 0, 0], {
  mm3_s: { label: 'mm³/s', factor: 1e-9, also: ['mm^3/s', 'mm3/s'] },
});

export const force = defineKind('force', [1, 1, -2, 0, 0], {
  N: { label: 'N', factor: 1 },
  mN: { label: 'mN', factor: 1e-3 },
  kgf: { label: 'kgf', factor: GRAVITY },
  gf: { label: 'gf', factor: GRAVITY / 1000 },
  lbf: { label: 'lbf', factor: LBF },
  ozf: { label: 'ozf', factor: LBF / 16 },
});

export const torque = defineKind('torque', [2, 1, -2, 0, 0], {
  N_mm: { label: 'N·mm', factor: 1e-3, also: ['nmm', 'n mm'] },
  N_m: { label: 'N·m', factor: 1, also: ['nm', 'n m'] },
  lbf_in: { label: 'lbf·in', factor: LBF * INCH, also: ['lbf in', 'in lbf'] },
  ozf_in: { label: 'ozf·in', factor: (LBF / 16) * INCH, also: ['ozf in'] },
});

export const pressure = defineKind('pressure', [-1, 1, -2, 0, 0], {
  MPa: { label: 'MPa', factor: 1e6, also: ['n/mm2', 'n/mm²'] },
  GPa: { label: 'GPa', factor: 1e9 },
  kPa: { label: 'kPa', factor: 1e3 },
  hPa: { label: 'hPa', factor: 100, also: ['mbar'] },
  Pa: { label: 'Pa', factor: 1 },
  psi: { label: 'psi', factor: LBF / INCH ** 2 },
});

/** Power-law consistency K: the shear stress at a shear rate of 1/s, so its dimension is that of a pressure. */
export const consistency = defineKind('consistency', [-1, 1, -2, 0, 0], {
  Pa_sn: { label: 'Pa·sⁿ', factor: 1, also: ['pa s^n', 'pa·s^n', 'pas', 'pa'] },
});

export const density = defineKind('density', [-3, 1, 0, 0, 0], {
  g_cm3: { label: 'g/cm³', factor: 1e3, also: ['g/cm^3', 'g/cm3'] },
  kg_m3: { label: 'kg/m³', factor: 1, also: ['kg/m^3', 'kg/m3'] },
});

export const linearDensity = defineKind('mass per length', [-1, 1, 0, 0, 0], {
  g_m: { label: 'g/m', factor: 1e-3 },
  kg_m: { label: 'kg/m', factor: 1 },
});

export const stiffness = defineKind('stiffness', [0, 1, -2, 0, 0], {
  N_mm: { label: 'N/mm', factor: 1e3 },
  N_m: { label: 'N/m', factor: 1 },
  lbf_in: { label: 'lbf/in', factor: LBF / INCH },
});

/** A temperature on a scale (the offset matters). For differences use `temperatureDifference`. */
export const temperature = defineKind('temperature', [0, 0, 0, 1, 0], {
  C: { label: '°C', factor: 1, offset: 273.15, also: ['c', 'degc'] },
  F: { label: '°F', factor: 5 / 9, offset: 459.67 * (5 / 9), also: ['f', 'degf'] },
  K: { label: 'K', factor: 1 },
});

export const temperatureDifference = defineKind('temperature difference', [0, 0, 0, 1, 0], {
  K: { label: 'K', factor: 1, also: ['°c', 'c'] },
  F: { label: '°F', factor: 5 / 9, also: ['f'] },
});

/** Change of length per length and kelvin. */
export const expansion = defineKind('thermal expansion', [0, 0, 0, -1, 0], {
  um_mK: { label: 'µm/(m·K)', factor: 1e-6, also: ['um/mk', 'um/(m k)', 'ppm/k'] },
  per_K: { label: '1/K', factor: 1, also: ['/k'] },
});

export const power = defineKind('power', [2, 1, -3, 0, 0], {
  W: { label: 'W', factor: 1 },
  mW: { label: 'mW', factor: 1e-3 },
});

export const voltage = defineKind('voltage', [2, 1, -3, 0, -1], {
  V: { label: 'V', factor: 1 },
  mV: { label: 'mV', factor: 1e-3 },
});

export const current = defineKind('current', [0, 0, 0, 0, 1], {
  A: { label: 'A', factor: 1 },
  mA: { label: 'mA', factor: 1e-3 },
});

export const resistance = defineKind('resistance', [2, 1, -3, 0, -2], {
  ohm: { label: 'Ω', factor: 1, also: ['ohm', 'ohms'] },
  kohm: { label: 'kΩ', factor: 1e3, also: ['kohm', 'k'] },
  Mohm: { label: 'MΩ', factor: 1e6, also: ['mohm', 'megohm', 'mohms'], cased: true },
});

export const energy = defineKind('energy', [2, 1, -2, 0, 0], {
  kJ: { label: 'kJ', factor: 1e3 },
  J: { label: 'J', factor: 1 },
});

export const heatCapacity = defineKind('heat capacity', [2, 1, -2, -1, 0], {
  J_K: { label: 'J/K', factor: 1 },
});

export const specificHeat = defineKind('specific heat', [2, 0, -2, -1, 0], {
  J_kgK: { label: 'J/(kg·K)', factor: 1, also: ['j/kgk', 'j/kg/k'] },
});

/** Heat lost per kelvin above the surroundings. */
export const heatConductance = defineKind('heat conductance', [2, 1, -3, -1, 0], {
  W_K: { label: 'W/K', factor: 1 },
});

/** Heat lost per area and kelvin above the surroundings. */
export const heatTransfer = defineKind('heat transfer coefficient', [0, 1, -3, -1, 0], {
  W_m2K: { label: 'W/(m²·K)', factor: 1, also: ['w/m2k', 'w/(m2k)', 'w/m²k'] },
});

export const heatingRate = defineKind('heating rate', [0, 0, -1, 1, 0], {
  K_s: { label: 'K/s', factor: 1 },
  K_min: { label: 'K/min', factor: 1 / 60 },
});

/** One over a time constant. */
export const decayRate = defineKind('decay rate', [0, 0, -1, 0, 0], {
  per_min: { label: '1/min', factor: 1 / 60, also: ['/min'] },
  per_s: { label: '1/s', factor: 1, also: ['/s'] },
});

export const diffusivity = defineKind('diffusivity', [2, 0, -1, 0, 0], {
  m2_s: { label: 'm²/s', factor: 1, also: ['m^2/s', 'm2/s'] },
  mm2_s: { label: 'mm²/s', factor: 1e-6, also: ['mm^2/s', 'mm2/s'] },
  um2_s: { label: 'µm²/s', factor: 1e-12, also: ['um^2/s', 'um2/s'] },
});

/** Share of the water vapour that the air could hold. */
export const humidity = defineKind('relative humidity', [0, 0, 0, 0, 0], {
  percent: { label: '%', factor: 0.01, also: ['%rh', 'rh'] },
});

/** Vapour in air. */
export const vapourDensity = defineKind('vapour density', [-3, 1, 0, 0, 0], {
  g_m3: { label: 'g/m³', factor: 1e-3, also: ['g/m^3', 'g/m3'] },
});

/** Bending stiffness E·I of a belt: a force times an area, for which few words but N·mm² are in use. */
export const bendingStiffness = defineKind('bending stiffness', [3, 1, -2, 0, 0], {
  N_mm2: { label: 'N·mm²', factor: 1e-6, also: ['n mm^2', 'n mm2', 'nmm2'] },
  N_m2: { label: 'N·m²', factor: 1, also: ['n m^2', 'n m2', 'nm2'] },
});

/** Turns, not radians, per time; the dimension of a turn is 1. */
export const rotation = defineKind('rotational speed', [0, 0, -1, 0, 0], {
  rpm: { label: 'rpm', factor: 1 / 60, also: ['1/min', 'r/min'] },
  per_s: { label: '1/s', factor: 1 },
});

/** One over the radius: unlike the radius it has a value when the thing is straight. 1 mm/m² is 1/km. */
export const curvature = defineKind('curvature', [-1, 0, 0, 0, 0], {
  mm_m2: { label: 'mm/m²', factor: 1e-3, also: ['1/km'] },
  per_m: { label: '1/m', factor: 1 },
});

/** The mole counts as a number here. */
export const energyPerMole = defineKind('energy per mole', [2, 1, -2, 0, 0], {
  kJ_mol: { label: 'kJ/mol', factor: 1e3 },
});

/** Mass of vapour over mass of dry air. */
export const humidityRatio = defineKind('humidity ratio', dimensionless, {
  g_kg: { label: 'g/kg', factor: 1e-3 },
});
