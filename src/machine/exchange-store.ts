import type { Choice } from './exchange-merge';
import { makePlan, outcome, samePlan, type Here, type Plan } from './exchange-plan';
import type { GoodFile } from './exchange-read';
import { done, type Stored } from './failure';
import { casesOf, keyOf, machineKey, photosOf, readingsOf, type Key, type Prefix } from './keys';
import type { StoredRecord } from './schema';
import type { Store } from './store';

/** What to save: one machine with its readings, every machine with its readings, or drafts and settings as well. */
export type Scope = { readonly machine: string } | 'machines' | 'everything';

type Reader = Pick<Store, 'get' | 'list'>;

function joined(parts: readonly Here[]): Here {
  return {
    records: parts.flatMap(({ records }) => records),
    unreadable: parts.flatMap(({ unreadable }) => unreadable),
  };
}

/** One record, or its key alone where it cannot be read: that stops no file. */
async function one(store: Reader, key: Key): Promise<Stored<Here>> {
  const found = await store.get(key);
  if (found.ok) return done({ records: found.value ? [found.value] : [], unreadable: [] });
  if (found.kind !== 'unreadable' && found.kind !== 'newer') return found;
  return done({ records: [], unreadable: [key] });
}

async function all(store: Reader, prefix: Prefix): Promise<Stored<Here>> {
  const found = await store.list(prefix);
  if (!found.ok) return found;
  const { records, unreadable } = found.value;
  return done({ records, unreadable: unreadable.map(({ key }) => key) });
}

async function together(...lookUps: readonly (() => Promise<Stored<Here>>)[]): Promise<Stored<Here>> {
  const parts: Here[] = [];
  for (const lookUp of lookUps) {
    const found = await lookUp();
    if (!found.ok) return found;
    parts.push(found.value);
  }
  return done(joined(parts));
}

/** The records to save to a file, and the keys of those that cannot be read and so are left out. */
export function gather(store: Reader, scope: Scope): Promise<Stored<Here>> {
  if (typeof scope !== 'string') {
    const { machine } = scope;
    return together(
      () => one(store, machineKey(machine)),
      () => all(store, readingsOf(machine)),
      () => all(store, casesOf(machine)),
      () => all(store, photosOf(machine)),
    );
  }
  const machines = (['machine:', 'reading:', 'case:', 'photo:'] as const).map((prefix) => () => all(store, prefix));
  if (scope === 'machines') return together(...machines);
  return together(
    ...machines,
    () => all(store, 'draft:'),
    () => all(store, 'typed:'),
    () => one(store, 'settings'),
  );
}

/** What taking in the file would do to the device as it is now. */
export async function planFor(store: Reader, file: GoodFile): Promise<Stored<Plan>> {
  // Photos are heavy: only those at stake.
  const photos = file.records.filter((record: StoredRecord) => record.type === 'photo').map(keyOf);
  const here = await together(
    () => all(store, 'machine:'),
    () => all(store, 'reading:'),
    () => all(store, 'case:'),
    () => all(store, 'draft:'),
    () => all(store, 'typed:'),
    () => one(store, 'settings'),
    ...photos.map((key) => () => one(store, key)),
  );
  return here.ok ? done(makePlan(file, here.value)) : here;
}

/** `looked again`: the records changed since the plan was seen; nothing was written, here is the new plan. */
export type TakenIn =
  { readonly kind: 'written'; readonly records: number } | { readonly kind: 'looked again'; readonly plan: Plan };

/** Does what the plan says, in one transaction: all of it or nothing. Writes nothing where the plan no longer holds. */
export async function takeIn(
  store: Reader & Pick<Store, 'save'>,
  file: GoodFile,
  seen: Plan,
  choose: (machine: string | null) => Choice,
): Promise<Stored<TakenIn>> {
  const now = await planFor(store, file);
  if (!now.ok) return now;
  if (!samePlan(seen, now.value)) return done({ kind: 'looked again', plan: now.value });
  const records = outcome(now.value, choose);
  const saved = records.length === 0 ? done(undefined) : await store.save(...records);
  return saved.ok ? done({ kind: 'written', records: records.length }) : saved;
}
