import { createEffect, createMemo, createSignal, on, Show } from 'solid-js';
import { A, useNavigate } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { believe } from '../../diagnosis/belief';
import { propose } from '../../diagnosis/order';
import { factsFor, symptomOf, unreadable } from '../../diagnosis/pick';
import type { Prospect } from '../../diagnosis/types';
import type { Case, Machine } from '../../machine/schema';
import { Fold } from '../../ui/fold';
import { withEntry, withFact, type NewEntry } from './edit';
import { CaseClosed, CaseEnd, RemoveCase } from './end';
import { CaseFacts } from './facts';
import { CaseHandOver } from './hand-over';
import { CaseLog } from './log';
import { CaseOthers } from './others';
import { CaseStep } from './step';
import { CaseSuspects } from './suspects';
import { cureOf, sameStep } from './said';
import { worth } from './worth';
import { OfCase } from './of-case';
import { useRecords } from '../desk/context';
import { ReadingPhoto } from '../desk/reading-photo';
import { printTime } from '../desk/time';
import './case.css';
import '../../ui/lists.css';

/** One case: what to do now, what is suspected, what was done. */
export function CaseScreen() {
  return <OfCase>{(found, machine) => <Readable case={found()} machine={machine()} />}</OfCase>;
}

/** What cannot be read with this catalogue is shown as it stands. */
function Readable(props: { case: Case; machine: Machine }) {
  const navigate = useNavigate();
  const reason = createMemo(() => unreadable(catalogue, props.case));
  return (
    <Show when={reason()} fallback={<CaseSheet case={props.case} machine={props.machine} />}>
      {(sentence) => (
        <>
          <h1>A case that cannot be read</h1>
          <p class="problem">{sentence()} It may come from a newer Trammel: bring this one up to date.</p>
          <p>
            On <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>, opened {printTime(props.case.opened)}
            . Nothing of it was changed.
          </p>
          <Show when={props.case.complaint}>
            <p>“{props.case.complaint}”</p>
          </Show>
          <RemoveCase case={props.case} onGone={() => navigate(`/machines/${props.machine.id}`)} />
        </>
      )}
    </Show>
  );
}

function CaseSheet(props: { case: Case; machine: Machine }) {
  const records = useRecords();
  const symptom = () => symptomOf(catalogue, props.case.symptom);
  const open = () => props.case.closed === null;
  const proposal = createMemo(() => (open() ? propose(catalogue, props.case, { worth: worth() }) : undefined));
  const belief = createMemo(() => proposal()?.belief ?? believe(catalogue, props.case));
  const [picked, setPicked] = createSignal<Prospect>();
  // Whatever was chosen instead was chosen for what was known then.
  createEffect(
    on(
      () => props.case.log,
      () => setPicked(undefined),
      { defer: true },
    ),
  );
  /** Only what the engine offers can take the proposal's place: never past the switching off. */
  const shown = createMemo((): Prospect | undefined => {
    const [now, other] = [proposal(), picked()];
    return other ? (now?.others.find(({ step }) => sameStep(step, other.step)) ?? now) : now;
  });
  const safe = () => proposal()?.step.kind !== 'make safe';
  const mended = () => cureOf(props.case) !== undefined;
  const unplugged = () => props.case.log.find(({ kind }) => kind === 'made safe');
  const edit = (change: (old: Case) => Case) => void records.changeCase(props.case.machine, props.case.id, change);
  const add = (entry: NewEntry) => {
    edit(withEntry(entry, new Date().toISOString()));
    window.scrollTo(0, 0);
  };
  const pick = (option: Prospect | undefined) => {
    setPicked(option);
    window.scrollTo(0, 0);
  };
  return (
    <>
      <h1>{symptom().title}</h1>
      <p class="small">
        <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
        <Show when={props.case.owner}>, asked by {props.case.owner}</Show>, {printTime(props.case.opened)}
      </p>
      <Show when={props.case.complaint}>
        <blockquote class="case-complaint">“{props.case.complaint}”</blockquote>
      </Show>
      <Show when={open() && !mended() && symptom().hazard && unplugged()} keyed>
        {(entry) => (
          <p class="due small">
            Unplugged since {printTime(entry.at)}. Leave it so, except where a step says that it needs power.
          </p>
        )}
      </Show>
      <div class="two-columns">
        <div>
          <Show when={props.case.closed} keyed>
            {(closed) => <CaseClosed case={props.case} closed={closed} />}
          </Show>
          <Show when={proposal()}>
            {(now) => (
              <CaseStep case={props.case} proposal={now()} shown={shown() ?? now()} onEntry={add} onPick={pick} />
            )}
          </Show>
        </div>
        <div>
          <Show when={safe()}>
            <Show when={!mended()}>
              <section class="section">
                <h2>{open() ? 'Still suspected' : 'Was still suspected'}</h2>
                <CaseSuspects
                  belief={belief()}
                  proposal={proposal()}
                  onEntry={add}
                  onMend={(cause) =>
                    pick(proposal()?.others.find(({ step }) => sameStep(step, { kind: 'mend', cause })))
                  }
                />
              </section>
            </Show>
            <Show when={(proposal()?.others.length ?? 0) > 0 && proposal()} keyed>
              {(now) => (
                <Fold title="Something else instead">
                  <CaseOthers proposal={now} onPick={pick} />
                </Fold>
              )}
            </Show>
          </Show>
          <section class="section">
            <h2>What was done</h2>
            <CaseLog case={props.case} fixed={!open() || !safe()} />
          </section>
          <Show when={safe()}>
            <Show when={open()}>
              <Fold title="What is known of it">
                <CaseFacts
                  facts={factsFor(catalogue, props.case.symptom)}
                  known={props.case.facts}
                  onAnswer={(fact, holds) => edit(withFact(fact, holds))}
                />
              </Fold>
            </Show>
            <Fold title="Photo of the complaint">
              <ReadingPhoto
                reading={{ machine: props.case.machine, at: props.case.opened, id: props.case.id }}
                title="As it came"
                alt="The complaint"
              />
            </Fold>
            <Fold title="Hand the case over">
              <CaseHandOver case={props.case} machine={props.machine} title={symptom().title} />
            </Fold>
            <Show when={open()} fallback={<RemoveClosed case={props.case} />}>
              <Fold title="End without a cure">
                <CaseEnd case={props.case} />
              </Fold>
            </Show>
          </Show>
        </div>
      </div>
    </>
  );
}

function RemoveClosed(props: { case: Case }) {
  const navigate = useNavigate();
  return (
    <p class="section">
      <RemoveCase case={props.case} onGone={() => navigate(`/machines/${props.case.machine}`)} />
    </p>
  );
}
