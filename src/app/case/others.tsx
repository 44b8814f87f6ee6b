import { createSignal, For, Show } from 'solid-js';
import { catalogue } from '../../diagnosis/catalogue';
import type { Prospect, Proposal } from '../../diagnosis/types';
import { minutesWords, stepTitle } from './said';
import say from './words/en';

/** Shown before the rest is asked for. */
const FIRST = 6;

/** Every other thing that could be done now, with what the case would then take. */
export function CaseOthers(props: { proposal: Proposal; onPick: (option: Prospect) => void }) {
  const [all, setAll] = createSignal(false);
  const shown = () => (all() ? props.proposal.others : props.proposal.others.slice(0, FIRST));
  const withheld = () => [
    ...props.proposal.withheld.map((check) => stepTitle(catalogue, { kind: 'check', check })),
    ...props.proposal.withheldMends.map((cause) => stepTitle(catalogue, { kind: 'mend', cause })),
  ];
  return (
    <>
      <p class="small faint">{say.others.minutes}</p>
      <ul class="index-list">
        <For each={shown()}>
          {(option) => (
            <li>
              <button type="button" class="case-other" onClick={() => props.onPick(option)}>
                <span>{stepTitle(catalogue, option.step)}</span>
                <span class="small faint">{minutesWords(option.expected)}</span>
              </button>
            </li>
          )}
        </For>
      </ul>
      <Show when={!all() && props.proposal.others.length > FIRST}>
        <button type="button" class="button" onClick={() => setAll(true)}>
          {say.others.all(props.proposal.others.length)}
        </button>
      </Show>
      <Show when={withheld().length > 0}>
        <p class="small">{say.others.withheld(withheld())}</p>
      </Show>
    </>
  );
}
