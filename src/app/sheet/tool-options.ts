import { AS_MARKED, toolsFor } from '../../reference/tools';
import type { Option } from '../../ui/quantity-field';

/** The tools that a quantity of this kind is read with, for a select. */
export function toolOptions(kind: string): readonly Option[] {
  const known = toolsFor(kind).map((tool) => ({ id: tool.id, label: `read with: ${tool.name}` }));
  return [...known, { id: AS_MARKED, label: 'as marked, or as set' }, { id: '', label: 'otherwise: ± as typed' }];
}
