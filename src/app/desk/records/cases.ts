import { caseKey, casesOf, photoKey, proofPhoto } from '../../../machine/keys';
import { newId } from '../../../machine/edit';
import { VERSION, type Case } from '../../../machine/schema';
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

/** Cases of repair, one at a time or a machine's. */
export function caseRecords(device: Device) {
  const { opened, told } = device;
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
    /** Edits the case as it stands by now, whatever another tab wrote. @returns false where it is gone or not kept */
    changeCase: async (machine: string, id: string, edit: (old: Case) => Case): Promise<boolean> => {
      const changed = new Date().toISOString();
      const result = await (
        await opened
      ).changeOn(caseKey(machine, id), machine, (old, ordinal) => old && counted(old, edit(old), changed, ordinal));
      told(result);
      return result.ok && result.value !== undefined;
    },
    /** With its photos. */
    removeCase: async (machine: string, id: string, called: string): Promise<boolean> => {
      const photos = [photoKey(machine, id), photoKey(machine, proofPhoto(id))];
      return undoable(device, say.removed.case(called), await (await opened).remove(caseKey(machine, id), ...photos));
    },
  };
}
