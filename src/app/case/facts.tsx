import { For } from 'solid-js';
import type { WordedFact } from '../../diagnosis/catalogue';
import type { FactId } from '../../diagnosis/types';
import { ChoiceField } from '../../ui/choice-field';
import { TermKeys } from '../desk/glossary/terms';
import say from './words/en';

const ANSWERS = [
  { id: 'yes', label: say.facts.yes },
  { id: 'no', label: say.facts.no },
  { id: 'open', label: say.facts.open },
] as const;

/** Questions about the machine and its history, each yes, no or not known. */
export function CaseFacts(props: {
  facts: readonly WordedFact[];
  known: Readonly<Record<FactId, boolean>>;
  onAnswer: (fact: FactId, holds: boolean | undefined) => void;
}) {
  return (
    <>
      <For each={props.facts}>
        {(fact) => (
          <ChoiceField
            label={fact.question}
            options={ANSWERS}
            value={((holds) => (holds === undefined ? 'open' : holds ? 'yes' : 'no'))(props.known[fact.id])}
            onPick={(id) => props.onAnswer(fact.id, id === 'open' ? undefined : id === 'yes')}
          />
        )}
      </For>
      <TermKeys texts={props.facts.map(({ question }) => question)} />
    </>
  );
}
