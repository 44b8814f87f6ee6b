import { For, Show } from 'solid-js';
import { catalogue, type WordedInspection } from '../../diagnosis/catalogue';
import { bayesSource, orderSources } from '../../diagnosis/sources';
import type { Proposal } from '../../diagnosis/types';
import { printCitation } from '../../reference/citation';
import { Fold } from '../../ui/fold';
import { oddsWords, percent, whyNext } from './said';
import say from './words/en';

/** Why this comes next, and what each answer would do. */
export function Why(props: { proposal: Proposal; check?: WordedInspection }) {
  const after = () =>
    props.proposal.outlooks.flatMap(({ answer, chance, belief }) => {
      const [first] = belief.ranked;
      const said = props.check?.answers.find(({ id }) => id === answer);
      // What settles nothing leaves things as they are.
      const label = said?.id === 'unsure' || said?.verdict === 'too close' ? undefined : said?.label;
      const cause = catalogue.causes.find(({ id }) => id === first);
      if (label === undefined || !cause || first === undefined) return [];
      return [say.why.after(label, percent(chance), oddsWords(belief.causes[first] ?? 0), cause.title)];
    });
  return (
    <Fold title={say.why.title} open>
      <For each={whyNext(catalogue, props.proposal)}>{(sentence) => <p>{sentence}</p>}</For>
      <Show when={after().length > 0}>
        <ul class="small case-after">
          <For each={after()}>{(sentence) => <li>{sentence}</li>}</For>
        </ul>
      </Show>
      <p class="small faint">{say.why.sources(printCitation(bayesSource), orderSources.map(printCitation))}</p>
    </Fold>
  );
}
