import { defaultSettings, type Settings } from '../../../machine/schema';
import type { Device } from './device';

/** How this person reads and writes, and which machine is on the bench. */
export function settingRecords({ opened, told, settings, machines }: Device) {
  const changeSettings = async (part: Partial<Settings>): Promise<void> => {
    const store = await opened;
    told(await store.change('settings', (old) => ({ ...(old ?? defaultSettings), ...part })));
  };
  return {
    settings,
    changeSettings,
    choose: (id: string | null) => changeSettings({ machine: id }),
    /** The machine on the bench. */
    current: () => machines().find((machine) => machine.id === settings().machine),
    /** To be called with the time at which an export of everything read the store, once its file was handed over. */
    noteExport: (at: Date) => changeSettings({ lastExport: at.toISOString() }),
  };
}

export type SettingRecords = ReturnType<typeof settingRecords>;
