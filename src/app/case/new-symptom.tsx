import { createMemo, For, Show } from 'solid-js';
import { catalogue, type WordedSymptom } from '../../diagnosis/catalogue';
import { Fold } from '../../ui/fold';
import say from './words/en';
import { createFinder } from '../desk/find-check';

/** Symptoms suggested by the complaint. */
const SUGGESTED = 3;

const find = createFinder(catalogue.symptoms.map((symptom) => ({ ...symptom, question: symptom.complaint })));

export const symptomById = (id: string | null): WordedSymptom | undefined =>
  catalogue.symptoms.find((one) => one.id === id);

/** What it looks like: suggested by the words of the complaint, or picked from the whole list. */
export function SymptomPicker(props: {
  picked: WordedSymptom | undefined;
  complaint: string;
  /** The complaint tells of a danger: only what looks for one can be picked. */
  danger: boolean;
  onPick: (symptom: WordedSymptom) => void;
}) {
  const listed = (symptom: WordedSymptom | undefined): boolean => !props.danger || symptom?.hazard !== undefined;
  const suggested = createMemo(() =>
    find(props.complaint)
      .filter((id) => id !== props.picked?.id && listed(symptomById(id)))
      .slice(0, SUGGESTED),
  );
  const Pick = (own: { symptom: WordedSymptom }) => (
    <button
      type="button"
      class="case-symptom"
      aria-pressed={props.picked?.id === own.symptom.id}
      onClick={() => props.onPick(own.symptom)}
    >
      <strong>{own.symptom.title}</strong>
      <span class="small">{say.quote(own.symptom.complaint)}</span>
    </button>
  );
  const List = (own: { open: boolean }) => (
    <Fold title={say.fresh.all} open={own.open}>
      <For each={catalogue.symptoms.filter(listed)}>{(one) => <Pick symptom={one} />}</For>
    </Fold>
  );
  return (
    <section class="section">
      <h2>{say.fresh.symptom}</h2>
      <Show when={props.danger}>
        <p>{say.stop.only}</p>
      </Show>
      <Show when={props.picked}>{(chosen) => <Pick symptom={chosen()} />}</Show>
      <Show when={suggested().length > 0}>
        <p class="small faint">{say.fresh.likely}</p>
        <For each={suggested()}>{(id) => <Show when={symptomById(id)}>{(one) => <Pick symptom={one()} />}</Show>}</For>
      </Show>
      <Show when={props.picked} fallback={<List open={props.complaint === '' || props.danger} />}>
        <List open={false} />
      </Show>
    </section>
  );
}
