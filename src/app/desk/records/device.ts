import { createSignal, onCleanup, untrack } from 'solid-js';
import type { Machine, Settings } from '../../../machine/schema';
import { defaultSettings } from '../../../machine/version';
import type { Change } from '../../../machine/announce';
import type { Removed, Store } from '../../../machine/store';
import { isStorageFailure, type StorageState, type Stored } from '../../../machine/failure';
import { createBenchOfTab } from './bench-of-tab';
import { applyTheme } from './theme';

/** What was removed last, until it is put back or the next thing is removed. */
export interface Undo {
  /** What was removed, as a sentence. */
  readonly said: string;
  readonly removed: Removed;
}

/** What the person is told: what could not be done, and what was removed and can be put back. */
function createNews() {
  const [trouble, setTrouble] = createSignal<string>();
  const [undo, setUndo] = createSignal<Undo>();
  return {
    /** What the last action could not do, as a sentence. */
    trouble,
    setTrouble,
    undo,
    setUndo,
    /** The value of a result, or undefined after telling the person why not. */
    told: <T>(result: Stored<T>): T | undefined => {
      if (result.ok) return result.value;
      setTrouble(result.reason);
      return undefined;
    },
  };
}

/** The one store of this device with what every screen may show of it, followed wherever it is changed, in this tab or another. */
export function createDevice(opening: Promise<Store>) {
  const [ready, setReady] = createSignal(false);
  const [machines, setMachines] = createSignal<readonly Machine[]>([]);
  const [settings, setSettings] = createSignal<Settings>(defaultSettings);
  const [state, setState] = createSignal<StorageState>({ kind: 'kept' });
  const [readingsTick, setReadingsTick] = createSignal(0);
  const [casesTick, setCasesTick] = createSignal(0);
  const [typedTick, setTypedTick] = createSignal(0);
  const news = createNews();
  const bench = createBenchOfTab();

  const loadMachines = async (store: Store) => {
    const found = news.told(await store.list('machine:'));
    if (found) setMachines([...found.records].sort((a, b) => a.name.localeCompare(b.name)));
  };
  const loadSettings = async (store: Store) => {
    const found = news.told(await store.get('settings'));
    if (!found) return;
    setSettings(found);
    applyTheme(found.theme);
  };

  /**
   * What is written behind the hand, kept or told. No room is no trouble to be told: the state says so already, and goes on
   * saying it, not once more at each keystroke.
   * @returns false where there is no room at the moment: worth another attempt
   */
  const toldBehind = (result: Stored<unknown>): boolean => {
    if (!result.ok && isStorageFailure(result)) return false;
    news.told(result);
    return true;
  };

  const followers = new Set<(change: Change) => void>();
  let ended = false;
  const endings: (() => void)[] = [];
  function follow(store: Store): void {
    if (ended) return;
    endings.push(
      store.onState((now) => {
        setState(now);
        // Said of a write that failed: by now another has gone through.
        if (now.kind === 'kept') news.setTrouble(undefined);
      }),
      store.subscribe((change) => {
        const { keys } = change;
        for (const follower of [...followers]) follower(change);
        if (keys.some((key) => key.startsWith('machine:'))) void loadMachines(store);
        if (keys.includes('settings')) void loadSettings(store);
        if (keys.some((key) => /^(reading|photo):/.test(key))) setReadingsTick((tick) => tick + 1);
        if (keys.some((key) => key.startsWith('case:'))) setCasesTick((tick) => tick + 1);
        if (keys.some((key) => key.startsWith('typed:'))) setTypedTick((tick) => tick + 1);
      }),
      () => store.close(),
    );
  }
  onCleanup(() => {
    ended = true;
    for (const end of endings) end();
  });

  const beginBench = () => untrack(() => bench.begin(settings().machine, new Set(machines().map(({ id }) => id))));
  const opened = opening.then(async (store) => {
    setState(store.state());
    follow(store);
    await Promise.all([loadMachines(store), loadSettings(store)]);
    beginBench();
    setReady(true);
    return store;
  });
  /** Calls back with the keys that changed, here or in another tab. @returns a function that ends it */
  const onChange = (follower: (change: Change) => void): (() => void) => {
    followers.add(follower);
    return () => void followers.delete(follower);
  };
  return {
    ...{ opened, ready, machines, settings, state, readingsTick, casesTick, typedTick },
    ...{ onChange, toldBehind, bench, ...news },
  };
}

export type Device = ReturnType<typeof createDevice>;
