import { dimensionless, type Dimension } from '../quantity/dimension';

/** A constant of a formula: SI value, dimension and how it is typeset (MathML content). */
export interface Constant {
  readonly value: number;
  readonly dimension: Dimension;
  readonly mathml: string;
}

const acceleration: Dimension = [1, 0, -2, 0, 0];

/** The named constants formulas may use. They have no uncertainty. */
export const constants: Readonly<Record<string, Constant>> = {
  pi: { value: Math.PI, dimension: dimensionless, mathml: '<mi>π</mi>' },
  /** A full turn. */
  rev: { value: 2 * Math.PI, dimension: dimensionless, mathml: '<mn>360°</mn>' },
  right_angle: { value: Math.PI / 2, dimension: dimensionless, mathml: '<mn>90°</mn>' },
  /** Standard gravity, ISO 80000-3 (9.806 65 m/s² exactly). */
  g_n: { value: 9.80665, dimension: acceleration, mathml: '<msub><mi>g</mi><mi mathvariant="normal">n</mi></msub>' },
  /** One second: makes a shear rate a bare number where a power law wants one. */
  one_s: { value: 1, dimension: [0, 0, 1, 0, 0], mathml: '<mn>1</mn><mtext>&#xA0;s</mtext>' },
  /** One ohm: makes a resistance a bare number where a logarithm wants one. */
  one_ohm: { value: 1, dimension: [2, 1, -3, 0, -2], mathml: '<mn>1</mn><mtext>&#xA0;Ω</mtext>' },
  /** Stefan–Boltzmann constant, W/(m²·K⁴): 2π⁵k⁴/(15h³c²), exact since the SI of 2019, to the digits given. */
  sigma_SB: {
    value: 5.67037441918443e-8,
    dimension: [0, 1, -3, -4, 0],
    mathml: '<msub><mi>σ</mi><mi mathvariant="normal">SB</mi></msub>',
  },
  /** 0 °C on the kelvin scale (SI brochure: exact). */
  zero_C: { value: 273.15, dimension: [0, 0, 0, 1, 0], mathml: '<mn>273.15</mn><mtext>&#xA0;K</mtext>' },
  /** Magnus’s formula over water, WMO-No. 8, annex 4.B: the vapour pressure at 0 °C, and the temperature beside it. */
  magnus_e: { value: 611.2, dimension: [-1, 1, -2, 0, 0], mathml: '<mn>611.2</mn><mtext>&#xA0;Pa</mtext>' },
  magnus_T: { value: 243.12, dimension: [0, 0, 0, 1, 0], mathml: '<mn>243.12</mn><mtext>&#xA0;K</mtext>' },
  /** Magnus’s formula over ice, WMO-No. 8, annex 4.B. */
  magnus_i: { value: 272.62, dimension: [0, 0, 0, 1, 0], mathml: '<mn>272.62</mn><mtext>&#xA0;K</mtext>' },
  /** Platinum by IEC 60751: R / R₀ = 1 + A t + B t² + C (t − 100 °C) t³, the last term below 0 °C only. */
  pt_A: {
    value: 3.9083e-3,
    dimension: [0, 0, 0, -1, 0],
    mathml: '<msub><mi>A</mi><mi mathvariant="normal">Pt</mi></msub>',
  },
  pt_B: {
    value: -5.775e-7,
    dimension: [0, 0, 0, -2, 0],
    mathml: '<msub><mi>B</mi><mi mathvariant="normal">Pt</mi></msub>',
  },
  pt_C: {
    value: -4.183e-12,
    dimension: [0, 0, 0, -4, 0],
    mathml: '<msub><mi>C</mi><mi mathvariant="normal">Pt</mi></msub>',
  },
  pt_T: { value: 100, dimension: [0, 0, 0, 1, 0], mathml: '<mn>100</mn><mtext>&#xA0;K</mtext>' },
  /** Gas constant of water vapour: R over 18.0153 g/mol, J/(kg·K). */
  R_v: {
    value: 461.5,
    dimension: [2, 0, -2, -1, 0],
    mathml: '<msub><mi>R</mi><mi mathvariant="normal">v</mi></msub>',
  },
  /** Molar gas constant, CODATA 2018, J/(mol·K), exact since the SI of 2019; a mole counts as a number. */
  R_gas: { value: 8.31446261815324, dimension: [2, 1, -2, -1, 0], mathml: '<mi>R</mi>' },
};
