import { createMemo, createResource, createSignal } from 'solid-js';
import { catalogue, type WordedFact } from '../../diagnosis/catalogue';
import type { FactId } from '../../diagnosis/types';
import { compareStamps } from '../../machine/stamp';
import type { Case } from '../../machine/schema';
import { useRecords } from '../desk/context';

type Facts = Readonly<Record<FactId, boolean>>;

/** How a machine is built, as its cases tell it: the newest word on each fact that lasts. */
function lastingFacts(cases: readonly Case[]): Facts {
  const lasting = new Set(catalogue.facts.flatMap((fact) => (fact.lasting ? [fact.id] : [])));
  const opening = (one: Case) => ({ at: one.opened, ordinal: one.since });
  const now = new Date();
  const told = [...cases]
    .sort((a, b) => compareStamps(opening(a), opening(b), now))
    .flatMap((one) => Object.entries(one.facts));
  return Object.fromEntries(told.filter(([fact]) => lasting.has(fact)));
}

/** Answers to the questions of a new case; those about how the machine is built are taken from its earlier cases. */
export function createKnownFacts(machine: () => string | undefined, questions: () => readonly WordedFact[]) {
  const records = useRecords();
  const [answered, setAnswered] = createSignal<Readonly<Record<FactId, boolean | undefined>>>({});
  const [remembered] = createResource(machine, async (id) => lastingFacts(await records.casesOf(id)));
  const facts = createMemo((): Facts => {
    const all: Readonly<Record<FactId, boolean | undefined>> = { ...(remembered.latest ?? {}), ...answered() };
    const asked = new Set(questions().map(({ id }) => id));
    return Object.fromEntries(
      Object.entries(all).flatMap(([id, holds]) => (holds !== undefined && asked.has(id) ? [[id, holds]] : [])),
    );
  });
  return {
    facts,
    /** Whether some answer is from an earlier case and not given anew. */
    fromEarlier: () => questions().some(({ id }) => remembered.latest?.[id] !== undefined && !(id in answered())),
    answer: (fact: FactId, holds: boolean | undefined) => setAnswered({ ...answered(), [fact]: holds }),
  };
}
