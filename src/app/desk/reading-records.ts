import { photoKey, readingKey } from '../../machine/keys';
import type { Stored } from '../../machine/failure';
import { VERSION, type Photo, type Reading } from '../../machine/schema';
import type { Removed, Store } from '../../machine/store';
import { printTime } from './time';

/** What single readings need of the records: how to reach the store, and how to tell the person. */
interface Desk {
  readonly opened: Promise<Store>;
  readonly told: <T>(result: Stored<T>) => T | undefined;
  readonly undoable: (what: string, result: Stored<Removed>) => boolean;
}

/** Readings looked through at a time. */
const PART = 100;

type Taken = Pick<Reading, 'machine' | 'at' | 'id'>;
const keyFor = ({ machine, at, id }: Taken) => readingKey(machine, at, id);

/** One reading at a time: looked up, noted on, given a photo, removed. */
export function readingRecords({ opened, told, undoable }: Desk) {
  return {
    /** Undefined where it was removed. */
    readingAt: async (taken: Taken): Promise<Reading | undefined> => told(await (await opened).get(keyFor(taken))),
    /** The next reading of the same check on the same machine; undefined while there is none. */
    readingAfter: async ({ machine, calculator, at, id }: Reading): Promise<Reading | undefined> => {
      const store = await opened;
      let after: Reading | undefined;
      let before: string | undefined;
      do {
        const want = { calculator, limit: PART, ...(before === undefined ? {} : { before }) };
        const page = told(await store.latest(machine, want));
        for (const reading of page?.records ?? []) {
          if (reading.at < at || reading.id === id) return after;
          after = reading;
        }
        before = page?.next;
      } while (before !== undefined);
      return after;
    },
    noteOn: async (taken: Taken, note: string): Promise<boolean> => {
      const result = await (await opened).change(keyFor(taken), (old) => (old ? { ...old, note } : undefined));
      told(result);
      return result.ok && result.value !== undefined;
    },
    /** With its photo. */
    removeReading: async (taken: Taken): Promise<boolean> => {
      const store = await opened;
      const what = `The reading of ${printTime(taken.at)}`;
      return undoable(what, await store.remove(keyFor(taken), photoKey(taken.machine, taken.id)));
    },
    photoOf: async (taken: Taken): Promise<Photo | undefined> =>
      told(await (await opened).get(photoKey(taken.machine, taken.id))),
    keepPhoto: async (taken: Taken, picture: Pick<Photo, 'width' | 'height' | 'jpeg'>): Promise<boolean> => {
      const photo: Photo = { v: VERSION, type: 'photo', machine: taken.machine, reading: taken.id, ...picture };
      const result = await (await opened).save(photo);
      told(result);
      return result.ok;
    },
    removePhoto: async (taken: Taken): Promise<boolean> =>
      undoable('The photo', await (await opened).remove(photoKey(taken.machine, taken.id))),
  };
}
