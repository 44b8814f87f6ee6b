import { kindById } from '../quantity/all-kinds';
import { unitById, type Unit } from '../quantity/unit';

/** The unit that a number of a reading was shown in; undefined where its kind was not kept or is not known here. */
export function keptUnit({ kind, unit }: { readonly kind: string; readonly unit: string }): Unit | undefined {
  const known = kindById(kind);
  return known && unitById(known, unit);
}
