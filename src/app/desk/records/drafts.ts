import type { Sheet } from '../../../machine/draft';
import { nextOrdinal } from '../../../machine/edit';
import { draftKey } from '../../../machine/keys';
import type { Draft } from '../../../machine/schema';
import { VERSION } from '../../../machine/version';
import type { Device } from './device';

/** Half-typed checks, one for each check and machine, or for none. */
export function draftRecords({ opened, told, toldBehind, onChange }: Device) {
  const draftFor = async (machine: string | null, calculator: string): Promise<Draft | undefined> =>
    told(await (await opened).get(draftKey(machine, calculator)));
  return {
    draftFor,
    /**
     * Edits the draft as it stands by now, whatever another tab wrote.
     * @returns false where there is no room at the moment: worth another attempt. What else fails is told.
     */
    changeDraft: async (
      machine: string | null,
      calculator: string,
      edit: (old: Draft | undefined) => Sheet & Pick<Draft, 'kept'>,
    ): Promise<boolean> => {
      const changed = new Date().toISOString();
      const result = await (
        await opened
      ).change(draftKey(machine, calculator), (old): Draft => {
        const { before, ...sheet } = edit(old);
        return {
          ...{
            v: VERSION,
            type: 'draft',
            machine,
            calculator,
            ...sheet,
            changed,
            ordinal: nextOrdinal(old?.ordinal ?? 0),
          },
          ...(before === undefined ? {} : { before }),
        };
      });
      return toldBehind(result);
    },
    /** Calls back with the draft as another tab wrote it. @returns a function that ends it */
    onDraft: (machine: string | null, calculator: string, listener: (draft: Draft) => void): (() => void) => {
      const key = draftKey(machine, calculator);
      return onChange(({ keys, elsewhere }) => {
        if (!elsewhere || !keys.includes(key)) return;
        void draftFor(machine, calculator).then((draft) => draft && listener(draft));
      });
    },
  };
}
