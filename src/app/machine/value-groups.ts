import type { InputSpec } from '../../engine/calculator';
import type { Place } from '../../engine/places';
import type { KeptValue } from '../../machine/schema';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { unitById } from '../../quantity/unit';
import { toolById } from '../../reference/tools';
import say from './words/en';

/** Groups that have no name of their own show their own word. */
const GROUPS: Readonly<Record<string, string>> = say.groups;

export interface Group {
  readonly name: string;
  readonly places: readonly Place[];
}

const firstUpper = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** Places by group, both in the order they come in. */
export function groupsOf(places: readonly Place[]): readonly Group[] {
  const groups = new Map<string, Place[]>();
  for (const place of places) {
    const id = place.place.split('.')[0] ?? '';
    groups.set(id, [...(groups.get(id) ?? []), place]);
  }
  return [...groups].map(([id, members]) => ({ name: GROUPS[id] ?? firstUpper(id), places: members }));
}

/** "8 mm", "400.00 ± 0.50 mm". */
export function printKept(kept: KeptValue, input: InputSpec, mark: DecimalMark): string {
  const unit = unitById(input.measure.kind, kept.unit) ?? input.measure.unit;
  return formatMeasured(kept.value, kept.half, unit, { mark });
}

/** How a kept value came to be known. */
export function printHow(kept: Pick<KeptValue, 'origin' | 'tool'>): string {
  if (kept.origin === 'nameplate') return say.value.marked;
  return toolById(kept.tool)?.name ?? kept.origin;
}
