import { createEffect, createSignal, on, Show, untrack } from 'solid-js';
import type { Reading } from '../../machine/schema';
import { useRecords } from '../desk/context';
import { MachinePicker } from '../desk/machine-picker';
import { readingOf } from '../desk/reading-of';
import { printTime } from '../desk/time';
import { learned } from './learned';
import type { Sheet } from './open-sheet';
import { PLATE } from './plate';
import { valueOf } from './print';
import say from './words/en';

/** The check whose reading waits for a machine: the sheet is made anew for the machine, and keeps it then. */
let waitingFor: string | undefined;

/** The keys that keep a reading on the machine and save a file. */
export function Keeper(props: {
  sheet: Sheet;
  /** Told of a reading once it is kept: a case may wait for it. */
  onKept: (reading: Reading) => void;
}) {
  const records = useRecords();
  const [choosing, setChoosing] = createSignal(false);
  const [kept, setKept] = createSignal<{ readonly said: string; readonly changes: number }>();
  const [saving, setSaving] = createSignal(false);
  const [refused, setRefused] = createSignal<string>();
  /** What was kept here still stands: no other tab put its own in place of it. */
  const stands = () => kept()?.changes === props.sheet.bench.changes();
  const ready = () => props.sheet.bench.evaluation().verdict.state !== 'none';

  const keep = async () => {
    const machine = props.sheet.machine();
    if (!machine) {
      waitingFor = props.sheet.id;
      setChoosing(true);
      return;
    }
    setKept(undefined);
    setSaving(true);
    const { changes, byHand } = props.sheet.bench;
    const [all, mine] = [changes(), byHand()];
    void props.sheet.flush();
    const at = new Date().toISOString();
    const evaluation = props.sheet.bench.evaluation();
    const reading = readingOf(props.sheet.calculator, evaluation, props.sheet.bench.situation());
    const picked = { ...props.sheet.bench.entered.choices };
    let done: Reading | undefined;
    try {
      done = await records.keepReading(
        { machine: machine.id, calculator: props.sheet.id, at, note: '', ...reading },
        learned(props.sheet.calculator, evaluation, picked, at),
      );
      // Said once the draft knows of it too: a page loaded anew from then on starts the next reading empty.
      if (done) await props.sheet.kept(done, changes() === all);
    } finally {
      setSaving(false);
    }
    if (done) props.onKept(done);
    // Words about what was kept must not stand beside numbers typed meanwhile.
    if (!done || byHand() !== mine) return;
    const said = records.keeping() ? say.keeper.kept(machine.name, printTime(at)) : say.keeper.passing(machine.name);
    setKept({ said, changes: all });
  };

  createEffect(() => {
    if (!props.sheet.machine() || waitingFor !== props.sheet.id || !ready()) return;
    waitingFor = undefined;
    void untrack(keep);
  });
  // What was kept is no longer what stands here.
  createEffect(
    on(
      () => props.sheet.bench.byHand(),
      () => setKept(undefined),
      { defer: true },
    ),
  );

  const value = (symbol: string) => valueOf(props.sheet.bench.evaluation(), symbol);
  const save = () => {
    setRefused(undefined);
    const made = props.sheet.download?.make(value);
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
      <Show when={props.sheet.download}>
        {(download) => (
          <button type="button" class="button" onClick={save}>
            {download().label}
          </button>
        )}
      </Show>
      <Show when={kept() !== undefined && props.sheet.calculator.measured.length > 0}>
        <button type="button" class="button" onClick={() => props.sheet.bench.repeat()}>
          {say.keeper.again}
        </button>
      </Show>
      <button
        type="button"
        class="button button-main"
        disabled={!ready() || saving() || stands()}
        aria-describedby={ready() ? undefined : PLATE}
        onClick={() => void keep()}
      >
        {say.keeper.keep}
      </button>
      <Show when={choosing() && !props.sheet.machine()}>
        <div class="keep-where">
          <p>{say.keeper.which}</p>
          <MachinePicker onPicked={() => setChoosing(false)} />
        </div>
      </Show>
      <Show when={refused()}>
        <p class="problem small" role="alert">
          {refused()}
        </p>
      </Show>
      <Show when={kept()}>
        {(found) => (
          <p class="small" role="status">
            {found().said} {stands() ? '' : say.keeper.elsewhere}
          </p>
        )}
      </Show>
    </>
  );
}
