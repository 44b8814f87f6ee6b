import type { Store } from '../../../machine/store';
import { caseRecords } from './cases';
import { createDevice } from './device';
import { draftRecords } from './drafts';
import { machineRecords } from './machines';
import { createOffline } from './offline';
import { fetchPart, NotFetched } from '../parts/fetch-part';
import { readingRecords } from './readings';
import { removals } from './removals';
import { typedRecords } from './typed';
import { settingRecords } from './settings';
import say from './words/en';

/**
 * What reads and writes records is fetched beside the first screen, which is drawn without them.
 * @throws where it does not come, asked for twice
 */
export async function openLater(): Promise<Store> {
  const ask = () => fetchPart(() => import('../../../machine/store'));
  const { openStore } = await ask().catch(async (error: unknown) => {
    if (!(error instanceof NotFetched)) throw error;
    await error.again();
    return ask();
  });
  return openStore();
}

/** The device's records as signals, with all that can be done with them. */
export function createRecords(opening: Promise<Store>) {
  const device = createDevice(opening);
  const offline = createOffline();
  const settings = settingRecords(device);
  return {
    /** For files, which read and write many records at once. */
    store: device.opened,
    ready: device.ready,
    readingsTick: device.readingsTick,
    casesTick: device.casesTick,
    typedTick: device.typedTick,
    trouble: device.trouble,
    forgetTrouble: () => device.setTrouble(undefined),
    keeping: () => device.state().kind === 'kept',
    /** Why nothing is being kept, as a sentence; empty while all is. */
    problem: () => {
      const now = device.state();
      return now.kind === 'kept' ? '' : say.notKept(now.failure.reason);
    },
    worksOffline: offline.ready,
    /** How far the offline copy is; undefined until the worker says so. */
    copyStage: offline.stage,
    checkCopy: offline.check,
    update: offline.update,
    ...settings,
    ...removals(device),
    ...machineRecords(device, settings),
    ...readingRecords(device, settings),
    ...caseRecords(device),
    ...draftRecords(device),
    ...typedRecords(device),
  };
}

export type Records = ReturnType<typeof createRecords>;
