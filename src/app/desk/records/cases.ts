import { caseKey, casesOf, photoKey, proofPhoto } from '../../../machine/keys';
import { newId } from '../../../machine/edit';
import type { Case } from '../../../machine/schema';
import { VERSION } from '../../../machine/version';
import { canonical } from '../../../machine/canonical';
import type { Device } from './device';
import { undoable } from './removals';
import say from './words/en';

const newestFirst = (a: Case, b: Case): number => b.ordinal - a.ordinal || (a.changed < b.changed ? 1 : -1);

/** The case with a change, and each entry that came with it, stamped with the ordinal of the change. */
const counted = (old: Case, edited: Case, changed: string, ordinal: number): Case => ({
  ...edited,
  ...{ changed, ordinal },
  log: edited.log.map((entry) => (old.log.includes(entry) ? entry : { ...entry, ordinal })),
});

/**
 * Whether an edit made in view of an older state of the case no longer holds: another tab has ended it, answered the same
 * check, or changed what was to be changed.
 */
export function isOvertaken(old: Case, edited: Case): boolean {
  if (old.closed !== null && edited.closed !== null) return true;
  const answered = new Set(old.log.flatMap((entry) => (entry.kind === 'answer' ? [entry.check] : [])));
  const fresh = edited.log.filter((entry) => !old.log.includes(entry));
  const twice = fresh.some((entry) => entry.kind === 'answer' && answered.has(entry.check));
  if (twice && edited.log.length > old.log.length) return true;
  return edited.log !== old.log && canonical(old.log) === canonical(edited.log);
}

/** Cases of repair, one at a time or a machine's. */
export function caseRecords(device: Device) {
  const { opened, told, setTrouble } = device;
  return {
    /** Undefined where there is none. */
    caseAt: async (machine: string, id: string): Promise<Case | undefined> =>
      told(await (await opened).get(caseKey(machine, id))),
    /** A machine's cases: open ones first, then by when they were last touched. */
    casesOf: async (machine: string): Promise<readonly Case[]> => {
      const found = told(await (await opened).list(casesOf(machine)))?.records ?? [];
      return [...found].sort((a, b) => Number(a.closed !== null) - Number(b.closed !== null) || newestFirst(a, b));
    },
    /** The case with this id on whichever machine: a link that comes back names no machine of ours. */
    findCase: async (id: string): Promise<Case | undefined> =>
      told(await (await opened).list('case:'))?.records.find((one) => one.id === id),
    /** @returns the case as it was kept; undefined where it was not, which the person has been told */
    addCase: async (
      given: Omit<Case, 'v' | 'type' | 'id' | 'ordinal'> & { readonly id?: string },
    ): Promise<Case | undefined> => {
      const id = given.id ?? newId();
      const make = (ordinal: number): Case => ({ since: ordinal, ...given, v: VERSION, type: 'case', id, ordinal });
      const result = await (
        await opened
      ).changeOn(caseKey(given.machine, id), given.machine, (_, ordinal) => make(ordinal));
      return told(result);
    },
    /**
     * Edits the case as it stands by now, whatever another tab wrote: what both did stays, and what cannot is said.
     * @returns false where it is gone, not kept, or overtaken by another tab
     */
    changeCase: async (machine: string, id: string, edit: (old: Case) => Case): Promise<boolean> => {
      const changed = new Date().toISOString();
      const found = { overtaken: false };
      const result = await (
        await opened
      ).changeOn(caseKey(machine, id), machine, (old, ordinal) => {
        const edited = old && edit(old);
        if (!old || !edited) return undefined;
        found.overtaken = isOvertaken(old, edited);
        return found.overtaken ? undefined : counted(old, edited, changed, ordinal);
      });
      told(result);
      if (result.ok && found.overtaken) setTrouble(say.caseOvertaken);
      return result.ok && result.value !== undefined && !found.overtaken;
    },
    /** With its photos. */
    removeCase: async (machine: string, id: string, called: string): Promise<boolean> => {
      const photos = [photoKey(machine, id), photoKey(machine, proofPhoto(id))];
      return undoable(device, say.removed.case(called), await (await opened).remove(caseKey(machine, id), ...photos));
    },
  };
}
