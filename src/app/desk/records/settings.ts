import type { Settings } from '../../../machine/schema';
import { defaultSettings } from '../../../machine/version';
import type { Device } from './device';

/** How this person reads and writes, and which machine is on this tab's bench. */
export function settingRecords({ opened, told, settings, machines, bench }: Device) {
  const changeSettings = async (part: Partial<Settings>): Promise<void> => {
    const store = await opened;
    told(await store.change('settings', (old) => ({ ...(old ?? defaultSettings), ...part })));
  };
  return {
    settings,
    changeSettings,
    /** Puts a machine on this tab's bench, or none; new tabs begin with it. */
    choose: async (id: string | null): Promise<void> => {
      bench.choose(id);
      await changeSettings({ machine: id });
    },
    /** Id of the machine on this tab's bench; null for none. */
    onBench: bench.machine,
    /** The machine on this tab's bench. */
    current: () => machines().find((machine) => machine.id === bench.machine()),
    /** What a link may do to the bench. */
    linkBench: bench,
    /** To be called with the time at which an export of everything read the store, once its file was handed over. */
    noteExport: (at: Date) => changeSettings({ lastExport: at.toISOString() }),
  };
}

export type SettingRecords = ReturnType<typeof settingRecords>;
