import { createSignal, createUniqueId, For, Show } from 'solid-js';
import { catalogue } from '../../diagnosis/catalogue';
import { causeOf } from '../../diagnosis/pick';
import type { Belief, CauseId, Proposal } from '../../diagnosis/types';
import type { NewEntry } from './edit';
import { lower, oddsWords, percent } from './said';

/** Below this a suspicion gets no line of its own. */
const FAINT = 0.02;

/** What is still suspected, most first: a bar and words for each, and the remainder. */
export function CaseSuspects(props: {
  belief: Belief;
  proposal: Proposal | undefined;
  onEntry: (entry: NewEntry) => void;
  onMend: (cause: CauseId) => void;
}) {
  const shown = () => props.belief.ranked.filter((id) => (props.belief.causes[id] ?? 0) >= FAINT);
  const rest = () => props.belief.ranked.filter((id) => (props.belief.causes[id] ?? 0) < FAINT);
  return (
    <>
      <ul class="case-suspects">
        <For each={shown()}>{(id) => <Suspect {...props} cause={id} share={props.belief.causes[id] ?? 0} />}</For>
        <li>
          <div class="case-suspect">
            <span>Something not listed</span>
            <Share share={props.belief.none} />
          </div>
        </li>
      </ul>
      <Show when={rest().length > 0}>
        <p class="small faint">
          Nearly or quite out:{' '}
          {rest()
            .map((id) => lower(causeOf(catalogue, id).title))
            .join('; ')}
          .
        </p>
      </Show>
    </>
  );
}

function Share(props: { share: number }) {
  return (
    <>
      <svg class="case-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
        <rect class="d-shade" x="0" y="0" width="100" height="8" />
        <rect class="d-solid" x="0" y="0" width={100 * props.share} height="8" />
      </svg>
      <span class="small">
        {oddsWords(props.share)} <span class="faint">({percent(props.share)})</span>
      </span>
    </>
  );
}

function Suspect(props: {
  cause: CauseId;
  share: number;
  proposal: Proposal | undefined;
  onEntry: (entry: NewEntry) => void;
  onMend: (cause: CauseId) => void;
}) {
  const [open, setOpen] = createSignal(false);
  const id = createUniqueId();
  const cause = () => causeOf(catalogue, props.cause);
  const ruleOut = (sure: 'certain' | 'fairly') => props.onEntry({ kind: 'ruled out', cause: props.cause, sure });
  const mendable = () =>
    props.proposal?.others.some(({ step }) => step.kind === 'mend' && step.cause === props.cause) ?? false;
  return (
    <li>
      <Show
        when={props.proposal}
        fallback={
          <div class="case-suspect">
            <span>{cause().title}</span>
            <Share share={props.share} />
          </div>
        }
      >
        <button
          type="button"
          class="case-suspect"
          aria-expanded={open()}
          aria-controls={id}
          onClick={() => setOpen(!open())}
        >
          <span>{cause().title}</span>
          <Share share={props.share} />
        </button>
      </Show>
      <div id={id}>
        <Show when={open() && props.proposal}>
          <p class="small">Part: {cause().part}. You know that it is not this?</p>
          <div class="row case-overrule">
            <button type="button" class="button" onClick={() => ruleOut('certain')}>
              Rule out for certain
            </button>
            <button type="button" class="button" onClick={() => ruleOut('fairly')}>
              Fairly sure it is not
            </button>
            <Show when={mendable()}>
              <button type="button" class="button" onClick={() => props.onMend(props.cause)}>
                Go to its mend
              </button>
            </Show>
          </div>
        </Show>
      </div>
    </li>
  );
}
