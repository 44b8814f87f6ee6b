import { createMemo, createSignal, Show } from 'solid-js';
import { useLocation, useNavigate } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { factsFor } from '../../diagnosis/pick';
import { LIMITS } from '../../machine/schema-parts';
import { CaseFacts } from './facts';
import { createKnownFacts } from './known-facts';
import { Complaint } from './new-complaint';
import { symptomById, SymptomPicker } from './new-symptom';
import { Problem } from './problem';
import say from './words/en';
import { useRecords } from '../desk/context';
import { MachinePicker } from '../desk/machine-picker';
import type { Picture } from '../desk/photo';
import './case.css';

/** Questions asked at the start: those that move the most. The others can be answered in the case. */
const ASKED = 5;

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
  const [picture, setPicture] = createSignal<Picture>();
  const [tried, setTried] = createSignal(false);
  const [saving, setSaving] = createSignal(false);

  const symptom = createMemo(() => symptomById(picked()));
  const machine = () => records.current();
  const questions = createMemo(() => {
    const chosen = symptom();
    return chosen ? factsFor(catalogue, chosen.id).slice(0, ASKED) : [];
  });
  const known = createKnownFacts(
    () => machine()?.id,
    () => questions(),
  );
  const missing = () =>
    symptom() === undefined ? say.fresh.noSymptom : machine() === undefined ? say.fresh.noMachine : undefined;

  /** In the address, so that a page that was put to sleep comes back with it. */
  const remember = () => {
    const typed = { symptom: picked() ?? '', said: complaint(), who: owner() };
    navigate(`/case/new?${new URLSearchParams(typed).toString()}`, { replace: true, scroll: false });
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
      facts: known.facts(),
      log: [],
      closed: null,
    });
    const photo = picture();
    if (made && photo) await records.keepPhoto({ machine: on.id, at, id: made.id }, photo);
    setSaving(false);
    if (made) navigate(`/case/${made.machine}/${made.id}`, { replace: true });
  };
  return (
    <main>
      <h1>{say.fresh.title}</h1>
      <Complaint
        complaint={complaint()}
        owner={owner()}
        pictured={picture() !== undefined}
        onComplaint={setComplaint}
        onOwner={setOwner}
        onTyped={remember}
        onPicture={setPicture}
      />
      <SymptomPicker
        picked={symptom()}
        complaint={complaint()}
        onPick={({ id }) => {
          setPicked(id);
          remember();
        }}
      />
      <section class="section">
        <h2>{say.fresh.machine}</h2>
        <MachinePicker />
      </section>
      <Show when={questions().length > 0}>
        <section class="section">
          <h2>{say.facts.title}</h2>
          <p class="small faint">
            {say.fresh.each}
            <Show when={known.fromEarlier()}> {say.fresh.earlier}</Show>
          </p>
          <CaseFacts facts={questions()} known={known.facts()} onAnswer={known.answer} />
        </section>
      </Show>
      <section class="section">
        <Problem sentence={tried() ? missing() : undefined} />
        <button type="button" class="button button-main case-wide" disabled={saving()} onClick={() => void open()}>
          {say.fresh.open}
        </button>
      </section>
    </main>
  );
}
