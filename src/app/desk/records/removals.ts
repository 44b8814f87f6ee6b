import type { Unreadable } from '../../../machine/aside';
import type { Stored } from '../../../machine/failure';
import type { Removed } from '../../../machine/store';
import type { Device, Undo } from './device';
import say from './words/en';

/**
 * Keeps what a removal took, to be put back.
 * @param said what was removed, as a sentence
 * @returns false where it was not removed, which the person has been told
 */
export function undoable({ told, setUndo }: Device, said: string, result: Stored<Removed>): boolean {
  const removed = told(result);
  if (removed && removed.length > 0) setUndo({ said, removed });
  return result.ok;
}

/** What was removed last and can be put back, and what cannot be read. */
export function removals(device: Device) {
  const { opened, told, undo, setUndo } = device;
  return {
    undo,
    forgetUndo: () => setUndo(undefined),
    putBack: async ({ removed }: Undo): Promise<void> => {
      const result = await (await opened).putBack(removed);
      told(result);
      if (result.ok) setUndo(undefined);
    },
    /** Everything that cannot be read. Looks through all there is: for the screen that shows it only. */
    listAside: async (): Promise<readonly Unreadable[]> => told(await (await opened).listAside()) ?? [],
    discard: async (item: Unreadable): Promise<boolean> =>
      undoable(device, say.removed.unreadable(item.key), await (await opened).discard(item.at)),
  };
}
