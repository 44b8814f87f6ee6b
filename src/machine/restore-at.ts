import { draftKeyNow, keyOf } from './keys';
import { restore, type Restored } from './schema';
import say from './words/en';

/** `restore` for what was found at a key: a record that belongs elsewhere is refused too. */
export function restoreAt(key: string, stored: unknown): Restored {
  const restored = restore(stored);
  if (!restored.ok || keyOf(restored.record) === key) return restored;
  // Its check has another name today: it reads as it is until it is moved.
  if (keyOf(restored.record) === draftKeyNow(key)) return restored;
  return { ok: false, newer: false, reason: say.record.elsewhere };
}
