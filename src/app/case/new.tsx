import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import { useLocation, useNavigate } from '@solidjs/router';
import { catalogue, type WordedSymptom } from '../../diagnosis/catalogue';
import { factsFor } from '../../diagnosis/pick';
import type { FactId } from '../../diagnosis/types';
import { LIMITS } from '../../machine/schema-parts';
import { Fold } from '../../ui/fold';
import { CaseFacts } from './facts';
import { useRecords } from '../desk/context';
import { createFinder } from '../desk/find-check';
import { MachinePicker } from '../desk/machine-picker';
import { shrinkPhoto, type Picture } from '../desk/photo';
import './case.css';

/** Questions asked at the start: those that move the most. The others can be answered in the case. */
const ASKED = 5;
/** Symptoms suggested by the complaint. */
const SUGGESTED = 3;

const find = createFinder(catalogue.symptoms.map((symptom) => ({ ...symptom, question: symptom.complaint })));
const symptomById = (id: string | null): WordedSymptom | undefined => catalogue.symptoms.find((one) => one.id === id);

/** A new case: the complaint, what it looks like, the machine, and what is known of it. */
export function CaseNew() {
  const records = useRecords();
  const navigate = useNavigate();
  const location = useLocation();
  const query = () => new URLSearchParams(location.search);
  // The address gives the first choice; after that the person picks.
  const [picked, setPicked] = createSignal(symptomById(query().get('symptom'))?.id ?? null);
  const [complaint, setComplaint] = createSignal((query().get('said') ?? '').slice(0, LIMITS.note));
  const [owner, setOwner] = createSignal((query().get('who') ?? '').slice(0, LIMITS.name));
  const [answered, setAnswered] = createSignal<Readonly<Record<FactId, boolean | undefined>>>({});
  const [picture, setPicture] = createSignal<Picture>();
  const [photoProblem, setPhotoProblem] = createSignal<string>();
  const [tried, setTried] = createSignal(false);
  const [saving, setSaving] = createSignal(false);

  const symptom = createMemo(() => symptomById(picked()));
  const suggested = createMemo(() => find(complaint()).slice(0, SUGGESTED));
  const machine = () => records.current();
  const questions = createMemo(() => {
    const chosen = symptom();
    return chosen ? factsFor(catalogue, chosen.id).slice(0, ASKED) : [];
  });
  // How the machine is built was told in an earlier case.
  const [remembered] = createResource(
    () => machine()?.id,
    async (id) => {
      const cases = await records.casesOf(id);
      const told = [...cases]
        .sort((a, b) => (a.opened < b.opened ? -1 : 1))
        .flatMap((one) => Object.entries(one.facts));
      const lasting = new Set(catalogue.facts.flatMap((fact) => (fact.lasting ? [fact.id] : [])));
      return Object.fromEntries(told.filter(([fact]) => lasting.has(fact)));
    },
  );
  const facts = createMemo((): Readonly<Record<FactId, boolean>> => {
    const all: Readonly<Record<FactId, boolean | undefined>> = { ...(remembered.latest ?? {}), ...answered() };
    const ids = new Set(questions().map(({ id }) => id));
    return Object.fromEntries(
      Object.entries(all).flatMap(([id, holds]) => (holds !== undefined && ids.has(id) ? [[id, holds]] : [])),
    );
  });
  const fromEarlier = () => questions().some(({ id }) => remembered.latest?.[id] !== undefined && !(id in answered()));
  const missing = () =>
    symptom() === undefined
      ? 'Pick what it looks like from the list: the checks are chosen by it.'
      : machine() === undefined
        ? 'Choose the machine, or make one: the case is kept with it.'
        : undefined;

  /** In the address, so that a page that was put to sleep comes back with it. */
  const remember = () => {
    const typed = { symptom: picked() ?? '', said: complaint(), who: owner() };
    navigate(`/case/new?${new URLSearchParams(typed).toString()}`, { replace: true, scroll: false });
  };
  const takePhoto = async (file: File | undefined) => {
    if (!file) return;
    setPhotoProblem(undefined);
    const small = await shrinkPhoto(file);
    if (typeof small === 'string') setPhotoProblem(small);
    else setPicture(small);
  };
  const open = async () => {
    setTried(true);
    const [about, on] = [symptom(), machine()];
    if (!about || !on) return;
    setSaving(true);
    const at = new Date().toISOString();
    const made = await records.addCase({
      machine: on.id,
      symptom: about.id,
      owner: owner().trim(),
      complaint: complaint().trim(),
      opened: at,
      changed: at,
      facts: facts(),
      log: [],
      closed: null,
    });
    const photo = picture();
    if (made && photo) await records.keepPhoto({ machine: on.id, at, id: made.id }, photo);
    setSaving(false);
    if (made) navigate(`/case/${made.machine}/${made.id}`, { replace: true });
  };

  const Pick = (own: { symptom: WordedSymptom }) => (
    <button
      type="button"
      class="case-symptom"
      aria-pressed={picked() === own.symptom.id}
      onClick={() => {
        setPicked(own.symptom.id);
        remember();
      }}
    >
      <strong>{own.symptom.title}</strong>
      <span class="small">“{own.symptom.complaint}”</span>
    </button>
  );

  const List = (own: { open: boolean }) => (
    <Fold title="The whole list" open={own.open}>
      <For each={catalogue.symptoms}>{(one) => <Pick symptom={one} />}</For>
    </Fold>
  );

  return (
    <main>
      <h1>A new case</h1>
      <section class="section">
        <label>
          What is wrong, in the words of whoever asks
          <textarea
            class="text-input"
            rows="3"
            maxlength={LIMITS.note}
            value={complaint()}
            onInput={(event) => setComplaint(event.currentTarget.value)}
            onChange={remember}
          />
        </label>
        <label class="case-line">
          Who asks (may stay empty)
          <input
            class="text-input"
            maxlength={LIMITS.name}
            value={owner()}
            onInput={(event) => setOwner(event.currentTarget.value)}
            onChange={remember}
          />
        </label>
        <label class="case-line">
          A photo of it (made smaller and kept on this device; where it was taken is left out)
          <input
            class="text-input"
            type="file"
            accept="image/*"
            onChange={(event) => void takePhoto(event.currentTarget.files?.[0])}
          />
        </label>
        <Show when={picture()}>
          <p role="status">The photo is ready and will be kept with the case.</p>
        </Show>
        <Show when={photoProblem()}>
          <p class="problem" role="alert">
            {photoProblem()}
          </p>
        </Show>
      </section>
      <section class="section">
        <h2>What it looks like</h2>
        <Show when={symptom()}>{(chosen) => <Pick symptom={chosen()} />}</Show>
        <Show when={suggested().some((id) => id !== picked())}>
          <p class="small faint">By these words it may be:</p>
          <For each={suggested().filter((id) => id !== picked())}>
            {(id) => <Show when={symptomById(id)}>{(one) => <Pick symptom={one()} />}</Show>}
          </For>
        </Show>
        <Show when={symptom()} fallback={<List open={complaint() === ''} />}>
          <List open={false} />
        </Show>
      </section>
      <section class="section">
        <h2>The machine</h2>
        <MachinePicker />
      </section>
      <Show when={questions().length > 0}>
        <section class="section">
          <h2>What is known of it</h2>
          <p class="small faint">
            Each answer moves the suspicion; “Not known” moves nothing.
            <Show when={fromEarlier()}> How the machine is built was taken from its earlier cases.</Show>
          </p>
          <CaseFacts
            facts={questions()}
            known={facts()}
            onAnswer={(fact, holds) => setAnswered({ ...answered(), [fact]: holds })}
          />
        </section>
      </Show>
      <section class="section">
        <Show when={tried() && missing()}>
          <p class="problem" role="alert">
            {missing()}
          </p>
        </Show>
        <button type="button" class="button button-main case-wide" disabled={saving()} onClick={() => void open()}>
          Open the case
        </button>
      </section>
    </main>
  );
}
