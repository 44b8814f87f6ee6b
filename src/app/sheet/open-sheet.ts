import { createEffect, createMemo, createSignal, on, onCleanup, type Component } from 'solid-js';
import type { Calculator, FigureProps } from '../../engine/calculator';
import type { Decoded } from '../../engine/link';
import { listed, type Download, type Loaded } from '../../engine/list';
import type { Entered, Sheet as Drafted } from '../../machine/draft';
import type { Machine, Reading, Settings } from '../../machine/schema';
import { force, length, temperature } from '../../quantity/kinds';
import type { Unit } from '../../quantity/unit';
import type { Records } from '../desk/records';
import { takeArrival, type Arrival } from './arrival';
import { createBench, type OnBench } from './bench';
import { createDraftKeeper } from './draft-keeper';
import { takeHanded } from './take-handed';

/** All that a sheet is made from: fixed for its life, since another check, machine or link makes another sheet. */
export interface Opening {
  readonly id: string;
  /** Id of the machine on the bench; null where there is none. */
  readonly machine: string | null;
  readonly loaded: Loaded;
  readonly draft: Drafted | undefined;
  /** The draft came along from before the machine was chosen, and is not yet kept under it. */
  readonly carried: boolean;
  readonly arrival: Arrival | undefined;
  /** The newest reading of this check on the machine, and whether nothing was entered since. */
  readonly last: Reading | undefined;
  readonly startsAgain: boolean;
}

/** The parts of an open sheet. They stay the same while it is open; what changes is behind functions. */
export interface Sheet extends OnBench {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly calculator: Calculator;
  readonly Figure: Component<FigureProps<Calculator>>;
  readonly download: Download | undefined;
  readonly machineId: string | null;
  readonly machine: () => Machine | undefined;
  readonly arrival: Arrival | undefined;
  /** What the link held that opened the sheet. */
  readonly decoded: Decoded | undefined;
  /** Writes the draft at once, so that it is no newer than the reading kept of it. */
  readonly flush: () => Promise<boolean>;
  /** Told of a reading kept from here: the next one is taken beside it. `stands`: nothing was entered since. */
  readonly kept: (reading: Reading, stands: boolean) => Promise<void>;
}

const BLANK: Entered = { entries: {}, choices: {} };

/** Units to show in place of an input's own, by kind. */
function unitsOf({ lengthUnit, forceUnit, temperatureUnit }: Settings): Readonly<Record<string, Unit>> {
  return {
    ...(lengthUnit === 'in' ? { [length.in.kind.id]: length.in.unit } : {}),
    ...(forceUnit === 'N' ? {} : { [force[forceUnit].kind.id]: force[forceUnit].unit }),
    ...(temperatureUnit === 'F' ? { [temperature.F.kind.id]: temperature.F.unit } : {}),
  };
}

/**
 * Opens a sheet: its bench over the draft, what came by a link or from the phone put in, what is entered kept as it changes.
 * Called once where the sheet is made; it ends with its owner.
 *
 * @param onLeave told what was entered where no machine was chosen, when the sheet ends
 */
export function openSheet(
  { id, machine: machineId, loaded, draft, carried, arrival, last, startsAgain }: Opening,
  records: Records,
  onLeave: (id: string, entered: Entered) => void,
): Sheet {
  const { calculator, Figure, download } = loaded;
  const meta = listed.find((entry) => entry.id === id);
  const machine = () => records.machines().find((one) => one.id === machineId);
  const units = createMemo(() => unitsOf(records.settings()));
  const [newest, setNewest] = createSignal(last);
  const bench = createBench(
    calculator,
    {
      kept: () => machine()?.values ?? {},
      keptChoices: () => machine()?.choices ?? {},
      last: newest,
      mark: () => records.settings().mark,
      units,
    },
    draft ?? BLANK,
    startsAgain,
  );
  const keeper = createDraftKeeper(records, machineId, id, bench, carried ? BLANK : (draft ?? BLANK));
  const decoded = takeArrival(arrival, bench, records);
  createEffect(on(bench.changes, () => keeper.note(), { defer: true }));
  takeHanded(id, calculator, bench);
  if (carried) {
    keeper.note();
    void keeper.flush();
  }
  onCleanup(() => {
    // A machine that was removed, here or in another tab, takes its draft along: what stands on the sheet does not go with it.
    if (!machine()) onLeave(id, bench.sheet());
  });
  const { title = '', question = '' } = meta ?? {};
  return {
    ...{ id, title, question, calculator, Figure, download, bench, machineId, machine, arrival, decoded },
    flush: keeper.flush,
    kept: async (reading, stands) => {
      setNewest(reading);
      if (!stands) return;
      bench.settle();
      await keeper.spend(reading.id);
    },
  };
}
