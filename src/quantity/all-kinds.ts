import * as measures from './kinds';
import type { Kind, Measure } from './unit';

type Measures = typeof measures;
type IdOf<M> = { [U in keyof M]: M[U] extends { readonly kind: Kind<infer I> } ? I : never }[keyof M];

/** Ids of every kind. */
export type KindId = { [K in keyof Measures]: IdOf<Measures[K]> }[keyof Measures];

/** A word for every unit of every kind, by kind's id and unit's id. */
export type EveryUnit<W> = {
  readonly [K in keyof Measures as IdOf<Measures[K]>]: { readonly [U in keyof Measures[K]]: W };
};

const everyMeasure: Readonly<Record<string, Readonly<Record<string, Measure>>>> = measures;

/** Every kind of quantity. */
export const allKinds: readonly Kind[] = [
  ...new Set(Object.values(everyMeasure).flatMap((units) => Object.values(units).map((measure) => measure.kind))),
];

const byId: ReadonlyMap<string, Kind> = new Map(allKinds.map((kind) => [kind.id, kind]));

/** The kind with this id, as stored records name it, or undefined. */
export function kindById(id: string): Kind | undefined {
  return byId.get(id);
}
