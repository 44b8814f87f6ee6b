import type { Choices, InputSpec } from '../../engine/calculator';
import { toolsOf } from '../../engine/tooled';
import { AS_MARKED, toolById } from '../../reference/tools';
import type { Option } from '../../ui/quantity-field';
import say from './words/en';

/** The tools that an input is read with under these options, for a select; the one picked before stays in it. */
export function toolOptions(spec: InputSpec, choices: Choices, picked: string): readonly Option[] {
  if (spec.measure.kind.whole) return [];
  const fit = toolsOf(spec, choices);
  const before = fit.some((tool) => tool.id === picked) ? undefined : toolById(picked);
  const known = [...fit, ...(before ? [before] : [])].map(({ id, name }) => ({ id, label: say.tools.readWith(name) }));
  return [...known, { id: AS_MARKED, label: say.tools.marked }, { id: '', label: say.tools.typed }];
}
