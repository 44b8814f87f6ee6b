import type { Dimension } from './dimension';

/** A unit of one kind: SI value = `factor` x number + `offset`. */
export interface Unit {
  readonly id: string;
  /** Id of its kind: the same unit id stands in several. */
  readonly kind: string;
  /** As printed after a number. */
  readonly label: string;
  readonly factor: number;
  readonly offset: number;
  /** Its prefix is told from another by its case: MΩ is not mΩ. */
  readonly cased?: boolean;
  /** Spellings a person may type, lower case. */
  readonly spellings: readonly string[];
}

/** A kind of quantity: what it measures, its dimension and the units it may be typed in. */
export interface Kind<I extends string = string> {
  readonly id: I;
  readonly dimension: Dimension;
  readonly units: readonly Unit[];
  /** Counts are whole numbers and carry no unit. */
  readonly whole: boolean;
}

/** A kind with the unit to show it in: `length.mm`. */
export interface Measure<I extends string = string> {
  readonly kind: Kind<I>;
  readonly unit: Unit;
}

interface UnitSpec {
  readonly label: string;
  readonly factor: number;
  readonly offset?: number;
  readonly also?: readonly string[];
  readonly cased?: boolean;
}

/**
 * Defines a kind and returns one `Measure` per unit, so that `length.mm` is a length shown in millimetres.
 * The id and the units' ids (the keys) are kept in stored records: never rename one.
 */
export function defineKind<I extends string, U extends string>(
  id: I,
  dimension: Dimension,
  units: Readonly<Record<U, UnitSpec>>,
  whole = false,
): Readonly<Record<U, Measure<I>>> {
  const entries = Object.entries<UnitSpec>(units);
  const list: Unit[] = entries.map(([unitId, spec]) => ({
    id: unitId,
    kind: id,
    label: spec.label,
    factor: spec.factor,
    offset: spec.offset ?? 0,
    ...(spec.cased ? { cased: true } : {}),
    spellings: [unitId, spec.label, ...(spec.also ?? [])].map((s) => s.toLowerCase()),
  }));
  const kind: Kind<I> = { id, dimension, units: list, whole };
  return Object.fromEntries(list.map((unit) => [unit.id, { kind, unit }])) as Record<U, Measure<I>>;
}

/** A number in `unit` as an SI value. */
export function toSi(value: number, unit: Unit): number {
  return value * unit.factor + unit.offset;
}

/** An SI value as a number in `unit`. */
export function fromSi(si: number, unit: Unit): number {
  return (si - unit.offset) / unit.factor;
}

/** The unit of `kind` with this id, or undefined. */
export function unitById(kind: Kind, id: string): Unit | undefined {
  return kind.units.find((unit) => unit.id === id);
}

const MICRO_SIGNS = /[µμ]/g;

/** Spelling as compared: lower case, one micro sign, no spaces or dots for products. */
function normalise(text: string): string {
  return text.trim().toLowerCase().replace(MICRO_SIGNS, 'u').replace(/\s+/g, '').replace(/[·*]/g, '');
}

/** True for mega against milli on the same unit: `MN` against `mN`, `mPa` against `MPa`. */
function otherPrefix(text: string, { label, cased }: Unit): boolean {
  if (cased) return !text.startsWith(label.charAt(0));
  if (!/^[mM]\p{Lu}/u.test(text) || label.startsWith(text.charAt(0))) return false;
  return text.length === label.length && label.endsWith(text.slice(1));
}

/** The unit of `kind` that a person wrote as `text`, or undefined. Case counts only where it must (`mN` is not `MN`). */
export function findUnit(kind: Kind, text: string): Unit | undefined {
  const exact = kind.units.find((unit) => unit.label === text.trim() || unit.id === text.trim());
  if (exact) return exact;
  const wanted = normalise(text);
  return kind.units.find(
    (unit) => !otherPrefix(text.trim(), unit) && unit.spellings.some((spelling) => normalise(spelling) === wanted),
  );
}
