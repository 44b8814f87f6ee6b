import { createEffect, createMemo, createSignal, on, Show } from 'solid-js';
import { useNavigate } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { believe } from '../../diagnosis/belief';
import { propose } from '../../diagnosis/order';
import { factsFor, symptomOf } from '../../diagnosis/pick';
import type { Prospect } from '../../diagnosis/types';
import type { Case, Machine } from '../../machine/schema';
import { Fold } from '../../ui/fold';
import { cureOf, sameStep } from './course';
import { withEntry, withFact, type NewEntry } from './edit';
import { CaseClosed, CaseEnd, RemoveCase } from './end';
import { CaseFacts } from './facts';
import { CaseHandOver } from './hand-over';
import { CaseLog } from './log';
import { CaseOthers } from './others';
import { CaseStep } from './step';
import { CaseSuspects } from './suspects';
import say from './words/en';
import { worth } from './worth';
import { useRecords } from '../desk/context';
import { ReadingPhoto } from '../desk/reading-photo';

/** The work on a case: the step to do now on one side, what it rests on and every other way on the other. */
export function CaseWork(props: { case: Case; machine: Machine }) {
  const records = useRecords();
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
  const add = (entry: NewEntry) => {
    const change = withEntry(entry, new Date().toISOString());
    void records.changeCase(props.case.machine, props.case.id, change);
    window.scrollTo(0, 0);
  };
  const pick = (option: Prospect | undefined) => {
    setPicked(option);
    window.scrollTo(0, 0);
  };
  return (
    <div class="two-columns">
      <div>
        <Show when={props.case.closed} keyed>
          {(closed) => <CaseClosed case={props.case} closed={closed} />}
        </Show>
        <Show when={proposal()}>
          {(now) => (
            <CaseStep
              case={props.case}
              machine={props.machine}
              proposal={now()}
              shown={shown() ?? now()}
              onEntry={add}
              onPick={pick}
            />
          )}
        </Show>
      </div>
      <div>
        <Show when={safe()}>
          <Show when={cureOf(props.case) === undefined}>
            <section class="section">
              <h2>{open() ? say.suspects.title : say.suspects.was}</h2>
              <CaseSuspects
                belief={belief()}
                proposal={proposal()}
                onEntry={add}
                onMend={(cause) => pick(proposal()?.others.find(({ step }) => sameStep(step, { kind: 'mend', cause })))}
              />
            </section>
          </Show>
          <Show when={(proposal()?.others.length ?? 0) > 0 && proposal()} keyed>
            {(now) => (
              <Fold title={say.others.title}>
                <CaseOthers proposal={now} onPick={pick} />
              </Fold>
            )}
          </Show>
        </Show>
        <section class="section">
          <h2>{say.log.title}</h2>
          <CaseLog case={props.case} fixed={!open() || !safe()} />
        </section>
        <Show when={safe()}>
          <Folds case={props.case} machine={props.machine} />
        </Show>
      </div>
    </div>
  );
}

/** What is asked for now and then. */
function Folds(props: { case: Case; machine: Machine }) {
  const records = useRecords();
  const navigate = useNavigate();
  const open = () => props.case.closed === null;
  return (
    <>
      <Show when={open()}>
        <Fold title={say.facts.title}>
          <CaseFacts
            facts={factsFor(catalogue, props.case.symptom)}
            known={props.case.facts}
            onAnswer={(fact, holds) =>
              void records.changeCase(props.case.machine, props.case.id, withFact(fact, holds))
            }
          />
        </Fold>
      </Show>
      <Fold title={say.screen.photo}>
        <ReadingPhoto
          reading={{ machine: props.case.machine, at: props.case.opened, id: props.case.id }}
          title={say.photo.before}
          alt={say.photo.complaint}
        />
      </Fold>
      <Fold title={say.handOver.title}>
        <CaseHandOver
          case={props.case}
          machine={props.machine}
          title={symptomOf(catalogue, props.case.symptom).title}
        />
      </Fold>
      <Show
        when={open()}
        fallback={
          <p class="section">
            <RemoveCase case={props.case} onGone={() => navigate(`/machines/${props.case.machine}`)} />
          </p>
        }
      >
        <Fold title={say.end.title}>
          <CaseEnd case={props.case} />
        </Fold>
      </Show>
    </>
  );
}
