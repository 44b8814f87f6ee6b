import { createEffect, createResource, createSignal, For, on, Show, untrack } from 'solid-js';
import type { Calculator } from '../../engine/calculator';
import type { Download } from '../../engine/list';
import type { Machine, Reading } from '../../machine/schema';
import type { Bench } from './bench';
import { useRecords } from '../desk/context';
import { learned, readingOf } from './keep';
import { ReadingEntry } from '../desk/reading-entry';
import { MachinePicker } from '../desk/machine-picker';
import { valueOf } from './print';
import { printTime } from '../desk/time';

/** The check whose reading waits for a machine: the sheet is made anew for the machine, and keeps it then. */
let waitingFor: string | undefined;

/** The keys that keep a reading on the machine and save a file. */
export function Keeper(props: {
  id: string;
  machine: Machine | undefined;
  calculator: Calculator;
  bench: Bench;
  download: Download | undefined;
  /** Told of a reading once it is kept: a case may wait for it. */
  onKept: (reading: Reading) => void;
}) {
  const records = useRecords();
  const [choosing, setChoosing] = createSignal(false);
  const [kept, setKept] = createSignal<string>();
  const [saving, setSaving] = createSignal(false);
  const [refused, setRefused] = createSignal<string>();
  const ready = () => props.bench.evaluation().verdict.state !== 'none' && !props.bench.shown().stale;

  const keep = async () => {
    const machine = props.machine;
    if (!machine) {
      waitingFor = props.id;
      setChoosing(true);
      return;
    }
    setKept(undefined);
    setSaving(true);
    const standing = props.bench.changes();
    const at = new Date().toISOString();
    const evaluation = props.bench.evaluation();
    const reading = readingOf(props.calculator, evaluation, props.bench.situation());
    const picked = { ...props.bench.entered.choices };
    const done = await records
      .keepReading(
        { machine: machine.id, calculator: props.id, at, note: '', ...reading },
        learned(props.calculator, evaluation, picked, at),
      )
      .finally(() => setSaving(false));
    if (done) props.onKept(done);
    // Words about what was kept must not stand beside numbers typed meanwhile.
    if (!done || props.bench.changes() !== standing) return;
    setKept(
      records.keeping()
        ? `Kept on ${machine.name}, ${printTime(at)}.`
        : `With ${machine.name} for as long as this page stays open. Save or write down what you need.`,
    );
  };

  createEffect(() => {
    if (!props.machine || waitingFor !== props.id || !ready()) return;
    waitingFor = undefined;
    void untrack(keep);
  });
  // What was kept is no longer what stands here.
  createEffect(
    on(
      () => props.bench.changes(),
      () => setKept(undefined),
      { defer: true },
    ),
  );

  const value = (symbol: string) => valueOf(props.bench.evaluation(), symbol);
  const save = () => {
    setRefused(undefined);
    const made = props.download?.make(value);
    if (!made) return;
    if ('reason' in made) {
      setRefused(made.reason);
      return;
    }
    const address = URL.createObjectURL(new Blob([made.bytes], { type: made.type }));
    const link = document.createElement('a');
    link.href = address;
    link.download = made.name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
  };

  return (
    <>
      <Show when={props.download}>
        {(download) => (
          <button type="button" class="button" onClick={save}>
            {download().label}
          </button>
        )}
      </Show>
      <button
        type="button"
        class="button button-main"
        disabled={!ready() || saving() || kept() !== undefined}
        onClick={() => void keep()}
      >
        Keep reading
      </button>
      <Show when={choosing() && !props.machine}>
        <div class="keep-where">
          <p>Which machine is this reading of?</p>
          <MachinePicker onPicked={() => setChoosing(false)} />
        </div>
      </Show>
      <Show when={refused()}>
        <p class="problem small" role="alert">
          {refused()}
        </p>
      </Show>
      <Show when={kept()}>
        <p class="small" role="status">
          {kept()}
        </p>
      </Show>
    </>
  );
}

const SHOWN = 5;

/** Earlier readings of this check on this machine. */
export function PastReadings(props: { id: string; machine: string | null }) {
  const records = useRecords();
  const [page] = createResource(
    () =>
      props.machine === null
        ? undefined
        : { machine: props.machine, calculator: props.id, tick: records.readingsTick() },
    ({ machine, calculator }) => records.latestReadings(machine, { calculator, limit: SHOWN }),
  );
  const readings = () => page()?.records ?? [];
  return (
    <Show when={readings().length > 0}>
      <section class="section">
        <h2>Kept for this machine</h2>
        <ul class="index-list">
          <For each={readings()}>
            {(reading) => (
              <li>
                <ReadingEntry reading={reading} />
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  );
}
