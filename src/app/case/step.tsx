import { Match, Show, Switch } from 'solid-js';
import { catalogue } from '../../diagnosis/catalogue';
import { inspectionOf, symptomOf } from '../../diagnosis/pick';
import type { Prospect, Proposal } from '../../diagnosis/types';
import type { Case, Machine } from '../../machine/schema';
import { CheckStep } from './check-step';
import type { NewEntry } from './edit';
import { KeepUnplugged } from './keep-unplugged';
import { MakeSafe } from './make-safe';
import { CaseMend } from './mend';
import { CaseProof } from './proof';
import { stepTitle } from './said';
import { Why } from './why';
import say from './words/en';

/** The one thing to do now. */
export function CaseStep(props: {
  case: Case;
  machine: Machine;
  proposal: Proposal;
  /** What is shown: the proposal, or what the person took in its place. */
  shown: Prospect;
  onEntry: (entry: NewEntry) => void;
  onPick: (option: Prospect | undefined) => void;
}) {
  const step = () => props.shown.step;
  const overruled = () => props.shown.step !== props.proposal.step;
  const add = (entry: NewEntry) => props.onEntry(entry);
  return (
    <section class="case-step" aria-label={say.step.title}>
      <Show when={overruled()}>
        <p class="small">
          {say.step.overruled(stepTitle(catalogue, props.proposal.step))}{' '}
          <button type="button" class="button button-plain" onClick={() => props.onPick(undefined)}>
            {say.step.back}
          </button>
        </p>
      </Show>
      <Switch>
        <Match when={((now) => now.kind === 'make safe' && now)(step())}>
          {(now) => (
            <MakeSafe
              case={props.case}
              machine={props.machine}
              title={symptomOf(catalogue, props.case.symptom).title}
              hazard={now().hazard}
              first={now().first}
              onEntry={add}
            />
          )}
        </Match>
        {/* Keyed by what the step is about: a number typed into it makes a new proposal, not a new step. */}
        <Match when={((now) => now.kind === 'check' && now.check)(step())} keyed>
          {(id) => (
            <CheckStep
              case={props.case}
              check={inspectionOf(catalogue, id)}
              proposal={overruled() ? undefined : props.proposal}
              onEntry={add}
            />
          )}
        </Match>
        <Match when={((now) => now.kind === 'mend' && now.cause)(step())} keyed>
          {(cause) => (
            <CaseMend cause={cause} onEntry={add}>
              <Show when={!overruled()}>
                <Why proposal={props.proposal} />
              </Show>
            </CaseMend>
          )}
        </Match>
        <Match when={((now) => now.kind === 'hand over' && now.unplugged)(step())}>
          <KeepUnplugged case={props.case} dangers={props.proposal.dangers} onEntry={add} />
        </Match>
        <Match when={step().kind === 'hand over'}>
          <p class="case-kicker">{say.askOther.kicker}</p>
          <h2>{say.askOther.title}</h2>
          <p>{say.askOther.how}</p>
        </Match>
        <Match when={((now) => now.kind === 'closed' && now.cause)(step())} keyed>
          {(cause) => <CaseProof case={props.case} cause={cause} />}
        </Match>
      </Switch>
    </section>
  );
}
