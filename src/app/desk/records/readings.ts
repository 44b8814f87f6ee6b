import { photoKey, readingKey, type ReadingAt } from '../../../machine/keys';
import { edited, newId, type MachineEdit } from '../../../machine/edit';
import type { Latest, Page } from '../../../machine/find';
import { compareReadings } from '../../../machine/stamp';
import type { Photo, Reading } from '../../../machine/schema';
import { VERSION } from '../../../machine/version';
import { fetchPart } from '../parts/fetch-part';
import { askToPersist } from '../persist';
import { printTime } from '../time';
import type { Device } from './device';
import { undoable } from './removals';
import type { SettingRecords } from './settings';
import say from './words/en';

/** Readings looked through at a time. */
const PART = 100;

type Taken = Pick<Reading, 'machine' | 'at' | 'id'>;
/** Readings of an earlier version are completed as they are taken out; what is stored stays. */
const named = async (readings: readonly Reading[]): Promise<readonly Reading[]> =>
  readings.every(({ whole }) => whole) ? readings : (await fetchPart(() => import('../explain'))).explainAll(readings);

/** One reading at a time: looked up, noted on, given a photo, removed. */
function singleReadings(device: Device) {
  const { opened, told } = device;
  return {
    /** Undefined where it was removed. */
    readingAt: async (taken: Taken): Promise<Reading | undefined> => {
      const found = told(await (await opened).reading(taken));
      return found && (await named([found]))[0];
    },
    /** The next reading of the same check on the same machine; undefined while there is none. */
    readingAfter: async (of: Reading): Promise<Reading | undefined> => {
      const { machine, calculator } = of;
      const store = await opened;
      let after: Reading | undefined;
      let before: string | undefined;
      do {
        const want = { calculator, limit: PART, ...(before === undefined ? {} : { before }) };
        const page = told(await store.latest(machine, want));
        for (const reading of page?.records ?? []) {
          if (compareReadings(reading, of) <= 0) return after && (await named([after]))[0];
          after = reading;
        }
        before = page?.next;
      } while (before !== undefined);
      return after && (await named([after]))[0];
    },
    /** The reading before it of the same check on the same machine; undefined for the first. */
    readingBefore: async (of: Reading): Promise<Reading | undefined> => {
      const store = await opened;
      const page = told(
        await store.latest(of.machine, { calculator: of.calculator, limit: 1, before: readingKey(of) }),
      );
      const before = page?.records[0];
      return before && (await named([before]))[0];
    },
    noteOn: async (taken: ReadingAt, note: string): Promise<boolean> => {
      const result = await (await opened).change(readingKey(taken), (old) => (old ? { ...old, note } : undefined));
      told(result);
      return result.ok && result.value !== undefined;
    },
    /** With its photo. */
    removeReading: async (taken: ReadingAt): Promise<boolean> => {
      const store = await opened;
      const said = say.removed.reading(printTime(taken.at));
      return undoable(device, said, await store.remove(readingKey(taken), photoKey(taken.machine, taken.id)));
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
      undoable(device, say.removed.photo, await (await opened).remove(photoKey(taken.machine, taken.id))),
  };
}

/** A machine's readings: kept, looked through, counted; and each by itself. */
export function readingRecords(device: Device, { changeSettings }: SettingRecords) {
  const { opened, told, machines, settings, state } = device;
  const invented = (machine: string): boolean => machines().some(({ id, demo }) => id === machine && demo);
  /** Once, when something worth keeping was first kept. */
  const askOnce = async (): Promise<void> => {
    if (state().kind !== 'kept' || settings().persistAsked !== null) return;
    await changeSettings({ persistAsked: new Date().toISOString() });
    void askToPersist();
  };
  return {
    ...singleReadings(device),
    /** Some of a machine's readings, from the newest back: constant in time however many there are. */
    latestReadings: async (machine: string, want: Latest): Promise<Page> => {
      const page = told(await (await opened).latest(machine, want));
      return page ? { ...page, records: await named(page.records) } : { records: [], unreadable: [], next: undefined };
    },
    /** Readings that no export of everything holds, nor a file that they came in from; those of invented machines left out. */
    countUnexported: async (): Promise<number> => {
      const store = await opened;
      const counts = told(await store.countUnheld(settings().lastExport ?? undefined)) ?? new Map<string, number>();
      return [...counts].reduce((sum, [machine, count]) => (invented(machine) ? sum : sum + count), 0);
    },
    /** Keeps a reading together with what it taught about the machine; undefined where it was not kept. */
    keepReading: async (
      reading: Omit<Reading, 'v' | 'type' | 'id' | 'ordinal'>,
      lesson: MachineEdit,
    ): Promise<Reading | undefined> => {
      const full = { v: VERSION, type: 'reading', id: newId(), ...reading } as const;
      const result = await (
        await opened
      ).keep(full, (machine, ordinal) => edited(machine, lesson, new Date(), ordinal));
      told(result);
      if (!result.ok) return undefined;
      if (!invented(reading.machine)) await askOnce();
      return result.value;
    },
  };
}
