import { isStorageFailure } from '../../../machine/failure';
import { draftKey } from '../../../machine/keys';
import { VERSION, type Draft } from '../../../machine/schema';
import type { Device } from './device';

/** Half-typed checks, one for each check and machine, or for none. */
export function draftRecords({ opened, told }: Device) {
  return {
    draftFor: async (machine: string | null, calculator: string): Promise<Draft | undefined> =>
      told(await (await opened).get(draftKey(machine, calculator))),
    /** @returns false where there is no room at the moment: worth another attempt. What else fails is told. */
    saveDraft: async (draft: Omit<Draft, 'v' | 'type' | 'ordinal'>): Promise<boolean> => {
      const result = await (
        await opened
      ).change(draftKey(draft.machine, draft.calculator), (old) => ({
        ...{ v: VERSION, type: 'draft', ...draft },
        ordinal: (old?.ordinal ?? 0) + 1,
      }));
      // The state says so already, and goes on saying it: not once more at each keystroke.
      if (!result.ok && isStorageFailure(result)) return false;
      told(result);
      return true;
    },
    forgetDraft: async (machine: string | null, calculator: string): Promise<void> => {
      told(await (await opened).remove(draftKey(machine, calculator)));
    },
  };
}
