import { cite, derived } from '../../engine/calculator';
import say from './words/en';

/** Where the options' flow values come from: no one source holds all three plastics. */
export const flowValues = cite(say.works.flow, 'absTableMiddle', true);

/** How far a tabulated K may be off: the same table holds K from 215 to 12 189 Pa·sⁿ. */
export const flowSpread = derived('flowSpread');

export const solidValues = cite(say.works.solid, 'modulusDensitySolid', true);

export const meltModulus = cite(say.works.melt, 'modulusBT', true);

/**
 * Typical values by plastic, in the units of the inputs: K in Pa·sⁿ, E and B in GPa, rho in g/cm³, f_K as a bare factor.
 * test/outside/retraction.test.ts works the PLA pair K, n out again from the curve's constants.
 */
export const plastics = {
  pla: {
    set: { K: 18700, n: [0.36, 0.04], f_K: 3, E: [3.5, 0.5], B: [1.4, 0.3], rho: [1.24, 0.03] },
  },
  abs: {
    set: { K: 9000, n: [0.455, 0.035], f_K: 3, E: [2.2, 0.3], B: [1.2, 0.4], rho: [1.04, 0.03] },
  },
  petg: {
    set: { K: 5000, n: [0.5, 0.15], f_K: 5, E: [2, 0.3], B: [1.5, 0.5], rho: [1.27, 0.03] },
  },
  other: {},
} as const;
