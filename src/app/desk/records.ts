import { createSignal, onCleanup } from 'solid-js';
import type { Unreadable } from '../../machine/aside';
import { draftKey, machineKey } from '../../machine/keys';
import { defaultSettings, VERSION, type Draft, type Machine, type Reading, type Settings } from '../../machine/schema';
import { blankMachine, edited, newId, type MachineEdit } from '../../machine/edit';
import type { Latest, Page } from '../../machine/find';
import { openStore, type Removed, type StorageState, type Store } from '../../machine/store';
import { isStorageFailure, type Stored } from '../../machine/failure';
import { applyTheme } from './theme';
import { createOffline } from './offline';
import { caseRecords } from './case-records';
import { readingRecords } from './reading-records';
import { askToPersist } from './persist';

/** What was removed last, until it is put back or the next thing is removed. */
export interface Undo {
  /** What was removed, as the person calls it. */
  readonly what: string;
  readonly removed: Removed;
}

const GONE = 'This machine is no longer there: it was removed, perhaps in another tab. Nothing was changed.';

/** The device's records as signals: one store, followed wherever it is changed, in this tab or another. */
export function createRecords(opening: Promise<Store> = openStore()) {
  const [ready, setReady] = createSignal(false);
  const [machines, setMachines] = createSignal<readonly Machine[]>([]);
  const [settings, setSettings] = createSignal<Settings>(defaultSettings);
  const [undo, setUndo] = createSignal<Undo>();
  const [state, setState] = createSignal<StorageState>({ kind: 'kept' });
  /** What the last action could not do, as a sentence. */
  const [trouble, setTrouble] = createSignal<string>();
  const [readingsTick, setReadingsTick] = createSignal(0);
  const [casesTick, setCasesTick] = createSignal(0);
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
  const opened = opening.then(async (store) => {
    setState(store.state());
    onStore(store);
    await Promise.all([loadMachines(store), loadSettings(store)]);
    setReady(true);
    return store;
  });

  let ended = false;
  const endings: (() => void)[] = [];
  function onStore(store: Store): void {
    if (ended) return;
    endings.push(
      store.onState((now) => {
        setState(now);
        // Said of a write that failed: by now another has gone through.
        if (now.kind === 'kept') setTrouble(undefined);
      }),
      store.subscribe(({ keys }) => {
        if (keys.some((key) => key.startsWith('machine:'))) void loadMachines(store);
        if (keys.includes('settings')) void loadSettings(store);
        if (keys.some((key) => /^(reading|photo):/.test(key))) setReadingsTick((tick) => tick + 1);
        if (keys.some((key) => key.startsWith('case:'))) setCasesTick((tick) => tick + 1);
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

  const save = async (...records: readonly (Machine | Reading)[]): Promise<boolean> => {
    const store = await opened;
    const result = await store.save(...records);
    told(result);
    return result.ok;
  };

  /** Keeps what a removal took, to be put back. */
  const undoable = (what: string, result: Stored<Removed>): boolean => {
    const removed = told(result);
    if (removed && removed.length > 0) setUndo({ what, removed });
    return result.ok;
  };

  const current = () => machines().find((machine) => machine.id === settings().machine);

  return {
    /** For files, which read and write many records at once. */
    store: opened,
    ready,
    machines,
    settings,
    readingsTick,
    casesTick,
    trouble,
    forgetTrouble: () => setTrouble(undefined),
    keeping: () => state().kind === 'kept',
    problem: () => {
      const now = state();
      return now.kind === 'kept' ? '' : `Nothing is being kept at the moment. ${now.failure.reason}`;
    },
    undo,
    forgetUndo: () => setUndo(undefined),
    putBack: async ({ removed }: Undo): Promise<void> => {
      const store = await opened;
      const result = await store.putBack(removed);
      told(result);
      if (result.ok) setUndo(undefined);
    },
    /** Everything that cannot be read. Looks through all there is: for the screen that shows it only. */
    listAside: async (): Promise<readonly Unreadable[]> => {
      const store = await opened;
      return told(await store.listAside()) ?? [];
    },
    discard: async (item: Unreadable): Promise<boolean> => {
      const store = await opened;
      return undoable(`The record at ${item.key}`, await store.discard(item.at));
    },
    /** Readings that no export of everything holds; those of invented machines left out. */
    countUnexported: async (): Promise<number> => {
      const store = await opened;
      const counts = told(await store.countReadings(settings().lastExport ?? undefined)) ?? new Map<string, number>();
      const invented = new Set(machines().flatMap((machine) => (machine.demo ? [machine.id] : [])));
      return [...counts].reduce((sum, [machine, count]) => (invented.has(machine) ? sum : sum + count), 0);
    },
    /** To be called with the time at which an export of everything read the store, once its file was handed over. */
    noteExport: (at: Date) => changeSettings({ lastExport: at.toISOString() }),
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
      const { demoMachine, demoReadings } = await import('../../machine/demo');
      if (await save(demoMachine, ...demoReadings)) await changeSettings({ machine: demoMachine.id });
      return demoMachine.id;
    },
    changeMachine: async (id: string, edit: MachineEdit): Promise<boolean> => {
      const store = await opened;
      const result = await store.change(machineKey(id), (old) => (old ? edited(old, edit, new Date()) : undefined));
      if (told(result) === undefined && result.ok) setTrouble(GONE);
      return result.ok && result.value !== undefined;
    },
    removeMachine: async (id: string): Promise<boolean> => {
      const store = await opened;
      const name = machines().find((machine) => machine.id === id)?.name ?? id;
      const gone = undoable(`“${name}”`, await store.removeMachine(id));
      if (gone && settings().machine === id) await changeSettings({ machine: null });
      return gone;
    },
    /** Some of a machine's readings, from the newest back: constant in time however many there are. */
    latestReadings: async (machine: string, want: Latest): Promise<Page> => {
      const store = await opened;
      return told(await store.latest(machine, want)) ?? { records: [], unreadable: [], next: undefined };
    },
    /** Keeps a reading together with what it taught about the machine; undefined where it was not kept. */
    keepReading: async (
      reading: Omit<Reading, 'v' | 'type' | 'id'>,
      lesson: MachineEdit,
    ): Promise<Reading | undefined> => {
      const store = await opened;
      const full: Reading = { v: VERSION, type: 'reading', id: newId(), ...reading };
      const result = await store.keep(full, (machine) => edited(machine, lesson, new Date()));
      told(result);
      if (!result.ok) return undefined;
      const invented = machines().some((machine) => machine.id === reading.machine && machine.demo);
      if (state().kind === 'kept' && settings().persistAsked === null && !invented) {
        await changeSettings({ persistAsked: new Date().toISOString() });
        void askToPersist();
      }
      return full;
    },
    ...readingRecords({ opened, told, undoable }),
    ...caseRecords({ opened, told, undoable }),
    draftFor: async (machine: string | null, calculator: string): Promise<Draft | undefined> => {
      const store = await opened;
      return told(await store.get(draftKey(machine, calculator)));
    },
    /** @returns false where there is no room at the moment: worth another attempt. What else fails is told. */
    saveDraft: async (draft: Omit<Draft, 'v' | 'type'>): Promise<boolean> => {
      const store = await opened;
      const result = await store.save({ v: VERSION, type: 'draft', ...draft });
      // The state says so already, and goes on saying it: not once more at each keystroke.
      if (!result.ok && isStorageFailure(result)) return false;
      told(result);
      return true;
    },
    forgetDraft: async (machine: string | null, calculator: string): Promise<void> => {
      const store = await opened;
      told(await store.remove(draftKey(machine, calculator)));
    },
  };
}

export type Records = ReturnType<typeof createRecords>;
