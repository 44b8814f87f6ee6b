import type { Choice } from './exchange-merge';
import { outcome, outcomeOf, planSteps, samePlanSteps, type Here, type Plan } from './exchange-plan';
import type { GoodFile } from './exchange-read';
import { done, type Stored } from './failure';
import { casesOf, keyOf, machineKey, photosOf, readingsOf, type Key, type Prefix } from './keys';
import type { StoredRecord } from './schema';
import { goOn, inSlices, partOf, type Watch } from './steps';
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

async function all(store: Reader, prefix: Prefix, watch?: Watch): Promise<Stored<Here>> {
  const found = await store.list(prefix, watch);
  if (!found.ok) return found;
  const { records, unreadable } = found.value;
  return done({ records, unreadable: unreadable.map(({ key }) => key) });
}

type LookUp = (watch: Watch | undefined) => Promise<Stored<Here>>;

async function together(watch: Watch | undefined, ...lookUps: readonly LookUp[]): Promise<Stored<Here>> {
  const parts: Here[] = [];
  for (const [i, lookUp] of lookUps.entries()) {
    const found = await lookUp(partOf(watch, i / lookUps.length, (i + 1) / lookUps.length));
    goOn(watch);
    if (!found.ok) return found;
    parts.push(found.value);
  }
  return done(joined(parts));
}

/**
 * The records to save to a file, and the keys of those that cannot be read and so are left out.
 * @throws Cancelled
 */
export function gather(store: Reader, scope: Scope, watch?: Watch): Promise<Stored<Here>> {
  if (typeof scope !== 'string') {
    const { machine } = scope;
    return together(
      watch,
      () => one(store, machineKey(machine)),
      (part) => all(store, readingsOf(machine), part),
      (part) => all(store, casesOf(machine), part),
      (part) => all(store, photosOf(machine), part),
    );
  }
  const machines = (['machine:', 'reading:', 'case:', 'photo:'] as const).map(
    (prefix) => (part: Watch | undefined) => all(store, prefix, part),
  );
  if (scope === 'machines') return together(watch, ...machines);
  return together(
    watch,
    ...machines,
    (part) => all(store, 'draft:', part),
    (part) => all(store, 'typed:', part),
    () => one(store, 'settings'),
  );
}

/** What taking in the file would do to the device as it is now. @throws Cancelled */
export async function planFor(store: Reader, file: GoodFile, watch?: Watch): Promise<Stored<Plan>> {
  // Photos are heavy: only those at stake.
  const photos = file.records.filter((record: StoredRecord) => record.type === 'photo').map(keyOf);
  const here = await together(
    partOf(watch, 0, 0.6),
    (part) => all(store, 'reading:', part),
    (part) => all(store, 'machine:', part),
    (part) => all(store, 'case:', part),
    (part) => all(store, 'draft:', part),
    (part) => all(store, 'typed:', part),
    () => one(store, 'settings'),
    ...photos.map((key) => () => one(store, key)),
  );
  if (!here.ok) return here;
  return done(await inSlices(planSteps(file, here.value), partOf(watch, 0.6, 1)));
}

/** `looked again`: the records changed since the plan was seen; nothing was written, here is the new plan. */
export type TakenIn =
  { readonly kind: 'written'; readonly records: number } | { readonly kind: 'looked again'; readonly plan: Plan };

/** Readings that stand here as the file has them, once the plan is done: what came in is held by a file. */
function heldAfter(plan: Plan, choose: (machine: string | null) => Choice): readonly string[] {
  return plan.groups.flatMap(({ machine, items }) =>
    items.flatMap((item) => {
      const same = item.state === 'same' || outcomeOf(item, choose(machine)) !== undefined;
      return item.file.type === 'reading' && same ? [item.key] : [];
    }),
  );
}

/**
 * Does what the plan says, in one transaction: all of it or nothing. Writes nothing where the plan no longer holds.
 * @throws Cancelled where `watch` ends it: then nothing is written
 */
export async function takeIn(
  store: Reader & Pick<Store, 'save' | 'saveWatched' | 'hold'>,
  file: GoodFile,
  seen: Plan,
  choose: (machine: string | null) => Choice,
  watch?: Watch,
): Promise<Stored<TakenIn>> {
  const now = await planFor(store, file, partOf(watch, 0, 0.4));
  if (!now.ok) return now;
  if (!(await inSlices(samePlanSteps(seen, now.value), partOf(watch, 0.4, 0.5))))
    return done({ kind: 'looked again', plan: now.value });
  const records = outcome(now.value, choose);
  const rest = partOf(watch, 0.5, 1);
  const save = () => (rest ? store.saveWatched(records, rest) : store.save(...records));
  const saved = records.length === 0 ? done(undefined) : await save();
  if (!saved.ok) return saved;
  // All is written by now: at worst the reminder comes once too often.
  await store.hold(heldAfter(now.value, choose));
  return done({ kind: 'written', records: records.length });
}
