import { createSignal, createUniqueId, For, Show } from 'solid-js';
import { catalogue } from '../../diagnosis/catalogue';
import { causeOf } from '../../diagnosis/pick';
import type { Belief, CauseId, Proposal } from '../../diagnosis/types';
import type { NewEntry } from './edit';
import { oddsWords, percent } from './said';
import say from './words/en';

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
            <span>{say.suspects.none}</span>
            <Share share={props.belief.none} />
          </div>
        </li>
      </ul>
      <Show when={rest().length > 0}>
        <p class="small faint">{say.suspects.out(rest().map((id) => causeOf(catalogue, id).title))}</p>
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
          <p class="small">{say.suspects.part(cause().part)}</p>
          <Show when={cause().danger}>
            <p class="small">{say.suspects.danger}</p>
          </Show>
          <div class="row case-overrule">
            <button type="button" class="button" onClick={() => ruleOut('certain')}>
              {say.suspects.certain}
            </button>
            <button type="button" class="button" onClick={() => ruleOut('fairly')}>
              {say.suspects.fairly}
            </button>
            <Show when={mendable()}>
              <button type="button" class="button" onClick={() => props.onMend(props.cause)}>
                {say.suspects.mend}
              </button>
            </Show>
          </div>
        </Show>
      </div>
    </li>
  );
}
