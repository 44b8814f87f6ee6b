import { AS_MARKED, toolsFor } from '../../reference/tools';
import type { Option } from '../../ui/quantity-field';
import say from './words/en';

/** The tools that a quantity of this kind is read with, for a select. */
export function toolOptions(kind: string): readonly Option[] {
  const known = toolsFor(kind).map((tool) => ({ id: tool.id, label: say.tools.readWith(tool.name) }));
  return [...known, { id: AS_MARKED, label: say.tools.marked }, { id: '', label: say.tools.typed }];
}
