import { createSignal, onCleanup } from 'solid-js';
import type { Unreadable } from '../machine/aside';
import { draftKey, machineKey, readingsOf } from '../machine/keys';
import { defaultSettings, VERSION, type Draft, type Machine, type Reading, type Settings } from '../machine/schema';
import { blankMachine, edited, newId, type MachineEdit } from '../machine/edit';
import { openStore, type StorageState, type Store } from '../machine/store';
import type { Stored } from '../machine/failure';
import { applyTheme } from './theme';
import { createOffline } from './offline';

/** The device's records as signals: one store, followed wherever it is changed, in this tab or another. */
export function createRecords(opening: Promise<Store> = openStore()) {
  const [ready, setReady] = createSignal(false);
  const [machines, setMachines] = createSignal<readonly Machine[]>([]);
  const [settings, setSettings] = createSignal<Settings>(defaultSettings);
  const [aside, setAside] = createSignal<readonly Unreadable[]>([]);
  const [state, setState] = createSignal<StorageState>({ kind: 'kept' });
  /** What the last action could not do, as a sentence. */
  const [trouble, setTrouble] = createSignal<string>();
  const [readingsTick, setReadingsTick] = createSignal(0);
  const offline = createOffline();

  /** The value of a result, or undefined after telling the person why not. */
  const told = <T>(result: Stored<T>): T | undefined => {
    if (result.ok) return result.value;
    setTrouble(result.reason);
    return undefined;
  };

  const loadMachines = async (store: Store) => {
    const found = told(await store.list('machine:'));
    if (found) setMachines([...found.records].sort((a, b) => a.name.localeCompare(b.name)));
  };
  const loadSettings = async (store: Store) => {
    const found = told(await store.get('settings'));
    if (!found) return;
    setSettings(found);
    applyTheme(found.theme);
  };
  const loadAside = async (store: Store) => {
    const found = told(await store.listAside());
    if (found) setAside(found);
  };

  const opened = opening.then(async (store) => {
    setState(store.state());
    onStore(store);
    await Promise.all([loadMachines(store), loadSettings(store), loadAside(store)]);
    setReady(true);
    return store;
  });

  let ended = false;
  const endings: (() => void)[] = [];
  function onStore(store: Store): void {
    if (ended) return;
    endings.push(
      store.onState(setState),
      store.subscribe(({ keys }) => {
        if (keys.some((key) => key.startsWith('machine:'))) void loadMachines(store);
        if (keys.includes('settings')) void loadSettings(store);
        if (keys.some((key) => key.startsWith('reading:'))) setReadingsTick((tick) => tick + 1);
      }),
      () => store.close(),
    );
  }
  onCleanup(() => {
    ended = true;
    for (const end of endings) end();
  });

  const changeSettings = async (part: Partial<Settings>): Promise<void> => {
    const store = await opened;
    told(await store.change('settings', (old) => ({ ...(old ?? defaultSettings), ...part })));
  };

  const save = async (...records: readonly (Machine | Reading | Draft)[]): Promise<boolean> => {
    const store = await opened;
    const result = await store.save(...records);
    told(result);
    return result.ok;
  };

  const current = () => machines().find((machine) => machine.id === settings().machine);

  return {
    ready,
    machines,
    settings,
    aside,
    readingsTick,
    trouble,
    forgetTrouble: () => setTrouble(undefined),
    keeping: () => state().kind === 'kept',
    problem: () => {
      const now = state();
      return now.kind === 'kept' ? '' : `Nothing is being kept at the moment. ${now.failure.reason}`;
    },
    worksOffline: offline.ready,
    update: offline.update,
    current,
    changeSettings,
    choose: (id: string | null) => changeSettings({ machine: id }),
    /** Makes a machine and puts it on the bench. */
    addMachine: async (name: string): Promise<string> => {
      const machine = blankMachine(name, new Date());
      if (await save(machine)) await changeSettings({ machine: machine.id });
      return machine.id;
    },
    addDemo: async (): Promise<string> => {
      const { demoMachine, demoReadings } = await import('../machine/demo');
      if (await save(demoMachine, ...demoReadings)) await changeSettings({ machine: demoMachine.id });
      return demoMachine.id;
    },
    changeMachine: async (id: string, edit: MachineEdit): Promise<boolean> => {
      const store = await opened;
      const result = await store.change(machineKey(id), (old) => (old ? edited(old, edit, new Date()) : undefined));
      told(result);
      return result.ok;
    },
    removeMachine: async (id: string): Promise<boolean> => {
      const store = await opened;
      const result = await store.removeMachine(id);
      told(result);
      if (result.ok && settings().machine === id) await changeSettings({ machine: null });
      return result.ok;
    },
    /** Newest first. */
    readingsFor: async (machine: string): Promise<readonly Reading[]> => {
      const store = await opened;
      return [...(told(await store.list(readingsOf(machine)))?.records ?? [])].reverse();
    },
    keepReading: async (reading: Omit<Reading, 'v' | 'type' | 'id'>): Promise<Reading | undefined> => {
      const full: Reading = { v: VERSION, type: 'reading', id: newId(), ...reading };
      return (await save(full)) ? full : undefined;
    },
    draftFor: async (machine: string | null, calculator: string): Promise<Draft | undefined> => {
      const store = await opened;
      return told(await store.get(draftKey(machine, calculator)));
    },
    saveDraft: async (draft: Omit<Draft, 'v' | 'type'>): Promise<boolean> =>
      save({ v: VERSION, type: 'draft', ...draft }),
    forgetDraft: async (machine: string | null, calculator: string): Promise<void> => {
      const store = await opened;
      told(await store.remove(draftKey(machine, calculator)));
    },
  };
}

export type Records = ReturnType<typeof createRecords>;
