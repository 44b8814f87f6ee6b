import type { InputSpec } from '../../engine/calculator';
import { partName, partOf } from '../../engine/parts';
import type { Place } from '../../engine/places';
import type { KeptValue } from '../../machine/schema';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { unitById } from '../../quantity/unit';
import { toolById } from '../../reference/tools';
import say from './words/en';

export interface Group {
  readonly name: string;
  readonly places: readonly Place[];
}

/** Places by the part of the machine that they belong to, both in the order they come in; those of no known part by their own word. */
export function groupsOf(places: readonly Place[]): readonly Group[] {
  const groups = new Map<string, Place[]>();
  for (const place of places) {
    const part = partOf(place.place);
    const name = part === undefined ? (place.place.split('.')[0] ?? '') : partName(part);
    groups.set(name, [...(groups.get(name) ?? []), place]);
  }
  return [...groups].map(([name, members]) => ({ name, places: members }));
}

/** "8 mm", "400.00 ± 0.50 mm". */
export function printKept(kept: KeptValue, input: InputSpec, mark: DecimalMark): string {
  const unit = unitById(input.measure.kind, kept.unit) ?? input.measure.unit;
  return formatMeasured(kept.value, kept.half, unit, { mark });
}

/** How a kept value came to be known. */
export function printHow(kept: Pick<KeptValue, 'origin' | 'tool'>): string {
  const tool = kept.origin === 'nameplate' ? undefined : toolById(kept.tool);
  return tool?.name ?? say.value.how[kept.origin];
}
