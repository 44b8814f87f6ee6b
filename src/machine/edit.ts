import { LIMITS } from './limits';
import type { KeptValue, Machine } from './schema';
import { VERSION } from './version';

const ID_LETTERS = 12;
const ALPHABET = 'abcdefghijkmnpqrstuvwxyz23456789';

/** A random id, 60 bits; letters that a hand can copy. */
export function newId(): string {
  // Not randomUUID: browsers have that only on secure origins.
  const bytes = crypto.getRandomValues(new Uint8Array(ID_LETTERS));
  return Array.from(bytes, (byte) => ALPHABET.charAt(byte % ALPHABET.length)).join('');
}

/** A machine of which nothing is known yet but its name. */
export function blankMachine(name: string, now: Date, id = newId()): Machine {
  const at = now.toISOString();
  return {
    v: VERSION,
    type: 'machine',
    id,
    name,
    note: '',
    demo: false,
    created: at,
    changed: at,
    ordinal: 1,
    values: {},
    choices: {},
  };
}

/** One more; a file may have brought the last there is, and the next thing is kept all the same. */
export const nextOrdinal = (most: number): number => Math.min(most + 1, LIMITS.ordinal);

/** What to change of a machine; undefined at a place forgets what is kept there. Values in SI. */
export interface MachineEdit {
  readonly name?: string;
  readonly note?: string;
  readonly values?: Readonly<Record<string, KeptValue | undefined>>;
  readonly choices?: Readonly<Record<string, string | undefined>>;
  /** Days, by calculator. */
  readonly intervals?: Readonly<Record<string, number | undefined>>;
}

function merged<T>(old: Readonly<Record<string, T>>, edit: Readonly<Record<string, T | undefined>>): Record<string, T> {
  const all: [string, T | undefined][] = Object.entries({ ...old, ...edit });
  return Object.fromEntries(all.flatMap(([place, value]) => (value === undefined ? [] : [[place, value]])));
}

/**
 * The machine with these changes and nothing else touched: for the store's `change`.
 * @param ordinal of what is done here, where it is done to more than the machine: one more than the machine's else
 */
export function edited(
  machine: Machine,
  edit: MachineEdit,
  now: Date,
  ordinal = nextOrdinal(machine.ordinal),
): Machine {
  const values = Object.entries(edit.values ?? {}).map(
    ([place, value]) => [place, value === undefined ? undefined : ({ ...value, ordinal } satisfies KeptValue)] as const,
  );
  return {
    ...machine,
    name: edit.name ?? machine.name,
    note: edit.note ?? machine.note,
    values: merged<KeptValue>(machine.values, Object.fromEntries(values)),
    choices: merged(machine.choices, edit.choices ?? {}),
    ...(edit.intervals ? { intervals: merged(machine.intervals ?? {}, edit.intervals) } : {}),
    changed: now.toISOString(),
    ordinal,
  };
}
