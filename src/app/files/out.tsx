import { createEffect, createMemo, createSignal, on, onCleanup, Show } from 'solid-js';
import type { Machine } from '../../machine/schema';
import type { Store } from '../../machine/store';
import { ChoiceField } from '../../ui/choice-field';
import { useRecords } from '../desk/context';
import './plan.css';
import { makeFile, printSize, shareable, type Form, type Made, type Wanted } from './make';
import { createWork, Working } from './working';
import say from './words/en';

const SCOPES = [
  { id: 'everything', label: say.save.scopes.everything },
  { id: 'machines', label: say.save.scopes.machines },
] as const;

const FORMS = [
  { id: 'file', label: say.save.forms.file },
  { id: 'csv', label: say.save.forms.csv },
] as const;

/** Parts of a file in the order they are told. */
const PARTS = ['machine', 'reading', 'photo', 'case', 'draft'] as const;

function contents({ counts, wanted }: Made): readonly string[] {
  const told = wanted.form === 'csv' ? (['reading'] as const) : PARTS;
  const parts = told.filter((kind) => counts[kind] > 0).map((kind) => say.made.counted(kind, counts[kind]));
  return wanted.form === 'file' && counts.settings > 0 ? [...parts, say.made.settings] : parts;
}

/** Makes a file, says what is in it, and hands it over. */
export function SaveFile(props: { store: Promise<Store>; machine: Machine | undefined }) {
  const records = useRecords();
  const [scope, setScope] = createSignal<'everything' | 'machines'>('everything');
  const [form, setForm] = createSignal<Form>('file');
  const [made, setMade] = createSignal<Made>();
  const [problem, setProblem] = createSignal<string>();
  const work = createWork();

  // What was made is another's as soon as something else is wanted.
  createEffect(
    on([scope, form, () => props.machine?.id], () => {
      setMade(undefined);
      setProblem(undefined);
    }),
  );

  const make = async (photos: boolean) => {
    const machine = props.machine;
    const wanted: Wanted = {
      scope: machine ? { machine: machine.id } : scope(),
      called: machine?.name ?? (scope() === 'everything' ? '' : say.save.machinesFile),
      form: form(),
      photos,
      mark: records.settings().mark,
    };
    setMade(undefined);
    setProblem(undefined);
    const watch = work.begin(say.save.making);
    const making = await work.end(makeFile(await props.store, wanted, watch));
    if (wanted.form !== form()) return;
    if (!making) setProblem(say.save.stopped);
    else if (making.ok) setMade(making.made);
    else setProblem(making.reason);
  };

  return (
    <div class="section">
      <h3>{say.save.title}</h3>
      <Show when={!props.machine}>
        <ChoiceField
          label={say.save.what}
          options={SCOPES}
          value={scope()}
          onPick={(id) => setScope(id === 'machines' ? 'machines' : 'everything')}
        />
      </Show>
      <ChoiceField
        label={say.save.whatFor}
        options={FORMS}
        value={form()}
        onPick={(id) => setForm(id === 'csv' ? 'csv' : 'file')}
      />
      <div class="row section">
        <button type="button" class="button" disabled={work.busy()} onClick={() => void make(true)}>
          {work.busy() ? say.save.making : say.save.make}
        </button>
        <Show when={problem() && form() === 'file'}>
          <button type="button" class="button" disabled={work.busy()} onClick={() => void make(false)}>
            {say.save.withoutPhotos}
          </button>
        </Show>
      </div>
      <Working work={work} />
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={made()} keyed>
        {(file) => <HandOver made={file} onWithoutPhotos={() => void make(false)} />}
      </Show>
    </div>
  );
}

/** The file that was made: what is in it, and the keys to save or share it. */
function HandOver(props: { made: Made; onWithoutPhotos: () => void }) {
  const records = useRecords();
  const [trouble, setTrouble] = createSignal<string>();
  const address = createMemo(() => {
    const url = URL.createObjectURL(props.made.blob);
    // A download that has just begun still reads from it.
    onCleanup(() => setTimeout(() => URL.revokeObjectURL(url), 60_000));
    return url;
  });
  const file = createMemo(() => shareable(props.made));
  /** After this nothing needs to remind of the readings in it. */
  const handedOver = () => {
    const { wanted, at } = props.made;
    if (typeof wanted.scope === 'string' && wanted.form === 'file' && wanted.photos) void records.noteExport(at);
  };
  const share = async (one: File) => {
    setTrouble(undefined);
    try {
      await navigator.share({ files: [one], title: one.name });
      handedOver();
    } catch (error) {
      // The person thought better of it.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      setTrouble(say.made.notShared);
    }
  };
  return (
    <div class="panel plan" role="status">
      <p>
        <strong>{props.made.name}</strong>, {say.made.contents(printSize(props.made.blob.size), contents(props.made))}
      </p>
      <Show when={props.made.missing > 0}>
        <p class="problem">{say.made.missing(props.made.missing)}</p>
      </Show>
      <div class="row">
        <a class="button button-main" href={address()} download={props.made.name} onClick={handedOver}>
          {say.made.save}
        </a>
        <Show when={file()}>
          {(one) => (
            <button type="button" class="button" onClick={() => void share(one())}>
              {say.made.share}
            </button>
          )}
        </Show>
        <Show when={props.made.wanted.form === 'file' && props.made.counts.photo > 0}>
          <button type="button" class="button" onClick={() => props.onWithoutPhotos()}>
            {say.save.withoutPhotos}
          </button>
        </Show>
      </div>
      <Show when={trouble()}>
        <p class="problem" role="alert">
          {trouble()}
        </p>
      </Show>
    </div>
  );
}
