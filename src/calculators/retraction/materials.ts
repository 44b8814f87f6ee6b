import { cite, derived } from '../../engine/calculator';
import { type Citation } from '../../reference/citation';

const REVIEW = 'Materials 2023, 16(24), 7664, review of melt data';

/** Where the options' flow values come from: no one source holds all three plastics. */
export const flowValues = cite(
  `ABS: ${REVIEW}. PLA: tangent between 100 and 1000 1/s to a Cross–WLF curve of one moulding grade at 210 °C. PETG: no published value found, common practice`,
  'absTableMiddle',
  true,
);

/** How far a tabulated K may be off: the same table holds K from 215 to 12 189 Pa·sⁿ. */
export const flowSpread: Citation = derived(
  `judged from ${REVIEW}, Table 1, where K spans about fifty times; PETG: common practice`,
);

export const solidValues = cite(
  'PLA: modulus from a materials database, density from a plastics data sheet. ABS and PETG: handbook ranges',
  'modulusDensitySolid',
  true,
);

export const meltModulus = cite(
  'Tait equation with its universal constant 0.0894; polymer p-v-T literature',
  'modulusBT',
  true,
);

/**
 * Typical values by plastic, in the units of the inputs: K in Pa·sⁿ, E and B in GPa, rho in g/cm³, f_K as a bare factor.
 * test/outside/retraction.test.ts works the PLA pair K, n out again from the curve's constants.
 */
export const plastics = {
  pla: {
    label: 'PLA',
    set: { K: 18700, n: [0.36, 0.04], f_K: 3, E: [3.5, 0.5], B: [1.4, 0.3], rho: [1.24, 0.03] },
  },
  abs: {
    label: 'ABS',
    set: { K: 9000, n: [0.455, 0.035], f_K: 3, E: [2.2, 0.3], B: [1.2, 0.4], rho: [1.04, 0.03] },
  },
  petg: {
    label: 'PETG (flow values: guesses)',
    set: { K: 5000, n: [0.5, 0.15], f_K: 5, E: [2, 0.3], B: [1.5, 0.5], rho: [1.27, 0.03] },
  },
  other: { label: 'another: enter its values' },
} as const;
