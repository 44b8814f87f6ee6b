import { createMemo, createResource, createSignal, Show } from 'solid-js';
import { useLocation, useNavigate } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { dangerIn } from '../../diagnosis/danger';
import { factsFor } from '../../diagnosis/pick';
import { LIMITS } from '../../machine/limits';
import { CaseFacts } from './facts';
import { stamped } from './edit';
import { createKnownFacts } from './known-facts';
import { Complaint } from './new-complaint';
import { symptomById, SymptomPicker } from './new-symptom';
import { Problem } from './problem';
import { entryOf, safetyOf } from './safety';
import { complaintAddress, StopGate } from './stop-gate';
import say from './words/en';
import { useRecords } from '../desk/context';
import { MachinePicker } from '../desk/machine-picker';
import { createTypedText, OtherText } from '../desk/typed-text';
import './case.css';

/** Questions asked at the start: those that move the most. The others can be answered in the case. */
const ASKED = 5;

/** The fact that words of a shock answer. */
const SHOCK_FELT = 'shock-felt';

/** Where what is typed for a case lies until it is opened. */
const typedAt = (field: string) => ({ machine: null, case: null, field });

/** A new case: the complaint, what it looks like, the machine, and what is known of it. */
export function CaseNew() {
  const records = useRecords();
  const navigate = useNavigate();
  const location = useLocation();
  const query = () => new URLSearchParams(location.search);
  // The address gives the first choice; after that the person picks.
  const [picked, setPicked] = createSignal(symptomById(query().get('symptom'))?.id ?? null);
  // What a link says stands in the fields; what the person had typed stays in the store until they go on from the link's words.
  const said = createTypedText(() => typedAt('complaint'), (query().get('said') ?? '').slice(0, LIMITS.note));
  const who = createTypedText(() => typedAt('owner'), (query().get('who') ?? '').slice(0, LIMITS.name));
  const [complaint, owner] = [said.text, who.text];
  const [pictured] = createResource(
    () => (records.ready() ? { tick: records.typedTick() } : undefined),
    () => records.typedIn(typedAt('photo')),
  );
  const picture = () => pictured.latest?.picture;
  const [tried, setTried] = createSignal(false);
  const [saving, setSaving] = createSignal(false);
  const danger = createMemo(() => dangerIn(complaint()));
  /** What was said of making it safe, where the words tell of a danger: it stands in the address, as it came with a link or was ticked. */
  const tick = () => (danger() ? safetyOf(query().get('tick')) : undefined);

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
  const missing = () => {
    const about = symptom();
    if (about === undefined) return say.fresh.noSymptom;
    if (danger() && about.hazard === undefined) return say.stop.other;
    return machine() === undefined ? say.fresh.noMachine : undefined;
  };

  /** In the address, so that a page that was put to sleep comes back with it. What is typed is kept in the store. */
  const remember = (safety = tick()) => {
    const [link, from] = [query().get('said') ?? '', query().get('who') ?? ''];
    const typed = { said: link === complaint() ? link : '', who: from === owner() ? from : '', tick: safety };
    navigate(complaintAddress('case/new', typed, { symptom: picked() ?? '' }), { replace: true, scroll: false });
  };
  const open = async () => {
    setTried(true);
    const [about, on] = [symptom(), machine()];
    if (!about || !on || missing() !== undefined) return;
    setSaving(true);
    const at = new Date().toISOString();
    const made = await records.addCase({
      machine: on.id,
      symptom: about.id,
      owner: owner().trim(),
      complaint: complaint().trim(),
      opened: at,
      changed: at,
      facts: danger()?.shock ? { [SHOCK_FELT]: true, ...known.facts() } : known.facts(),
      log: ((safety) => (safety ? [stamped(entryOf(safety), at)] : []))(tick()),
      closed: null,
    });
    const photo = picture();
    if (made && photo) await records.keepPhoto({ machine: on.id, at, id: made.id }, photo);
    if (made) await Promise.all([said.used(), who.used(), records.forgetTyped(typedAt('photo'), '')]);
    setSaving(false);
    if (made) navigate(`/case/${made.machine}/${made.id}`, { replace: true });
  };
  const Rest = () => (
    <>
      <SymptomPicker
        picked={symptom()}
        complaint={complaint()}
        danger={danger() !== undefined}
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
    </>
  );
  return (
    <main>
      <h1>{say.fresh.title}</h1>
      <Complaint
        complaint={complaint()}
        owner={owner()}
        pictured={picture() !== undefined}
        onComplaint={said.type}
        onOwner={who.type}
        onTyped={() => remember()}
        onPicture={(taken) => void records.keepTypedPicture(typedAt('photo'), taken)}
      />
      <OtherText typed={said} />
      <OtherText typed={who} />
      <Show when={danger()}>
        {(of) => <StopGate danger={of()} said={complaint()} who={owner()} tick={tick()} onTick={remember} />}
      </Show>
      <Show when={danger() === undefined || tick()} fallback={<p>{say.stop.first}</p>}>
        <Rest />
      </Show>
    </main>
  );
}
