import type { InputSpec } from '../../src/engine/calculator';
import type { Measure } from '../../src/quantity/unit';

/** An input of no calculator, with a label. */
export const inputNamed = (label: string, measure: Measure, rest: Omit<InputSpec, 'label' | 'measure'>): InputSpec => ({
  label,
  measure,
  ...rest,
});
