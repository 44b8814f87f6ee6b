import { For, Match, Show, Switch } from 'solid-js';
import { useNavigate } from '@solidjs/router';
import { listed } from '../../engine/list';
import { catalogue, type WordedInspection } from '../../diagnosis/catalogue';
import { bayesSource, orderSources } from '../../diagnosis/sources';
import { inspectionOf, symptomOf } from '../../diagnosis/pick';
import type { Hazard, Prospect, Proposal } from '../../diagnosis/types';
import type { Case } from '../../machine/schema';
import { printCitation } from '../../reference/citation';
import { Fold } from '../../ui/fold';
import type { NewEntry } from './edit';
import { CaseMend } from './mend';
import { CaseProof } from './proof';
import { CaseReadings } from './readings';
import { expectAnswer } from './waiting';
import { HAZARDS, KINDS, lower, minutesWords, oddsWords, percent, stepTitle, whyNext } from './said';
import { useRecords } from '../desk/context';
import { titleOf } from '../desk/reading-entry';

export interface StepProps {
  case: Case;
  proposal: Proposal;
  /** What is shown: the proposal, or what the person took in its place. */
  shown: Prospect;
  onEntry: (entry: NewEntry) => void;
  onPick: (option: Prospect | undefined) => void;
}

/** The one thing to do now. */
export function CaseStep(props: StepProps) {
  const step = () => props.shown.step;
  const overruled = () => props.shown.step !== props.proposal.step;
  return (
    <section class="case-step" aria-label="Next step">
      <Show when={overruled()}>
        <p class="small">
          You chose this instead of: {lower(stepTitle(catalogue, props.proposal.step))}.{' '}
          <button type="button" class="button button-plain" onClick={() => props.onPick(undefined)}>
            Back to what is proposed
          </button>
        </p>
      </Show>
      <Switch>
        <Match when={((now) => now.kind === 'make safe' && now)(step())}>
          {(now) => <MakeSafe hazard={now().hazard} onEntry={(entry) => props.onEntry(entry)} />}
        </Match>
        {/* Keyed by what the step is about: a number typed into it makes a new proposal, not a new step. */}
        <Match when={((now) => now.kind === 'check' && now.check)(step())} keyed>
          {(id) => (
            <CheckStep {...props} check={inspectionOf(catalogue, id)}>
              {overruled() ? undefined : props.proposal}
            </CheckStep>
          )}
        </Match>
        <Match when={((now) => now.kind === 'mend' && now.cause)(step())} keyed>
          {(cause) => (
            <CaseMend {...props} cause={cause}>
              <Show when={!overruled()}>
                <Why proposal={props.proposal} />
              </Show>
            </CaseMend>
          )}
        </Match>
        <Match when={step().kind === 'hand over'}>
          <p class="case-kicker">What is left</p>
          <h2>Ask someone else</h2>
          <p>
            Nothing on the list is worth more of your time now: what is left is unlikely, or needs hands or tools that
            are not here. Print or send the sheet with what was found so far, then end the case below as handed over. A
            check that was skipped or answered in doubt can be taken back in the log.
          </p>
        </Match>
        <Match when={((now) => now.kind === 'closed' && now.cause)(step())} keyed>
          {(cause) => <CaseProof case={props.case} cause={cause} />}
        </Match>
      </Switch>
    </section>
  );
}

/** Stands alone: until it is confirmed the case shows no other step. */
function MakeSafe(props: { hazard: Hazard; onEntry: (entry: NewEntry) => void }) {
  return (
    <div class="case-safe">
      <p class="case-kicker">Before anything else</p>
      <h2>Switch off and pull the plug</h2>
      <p>{HAZARDS[props.hazard]} Do not go on looking while it is under power.</p>
      <ol>
        <li>Switch the machine off.</li>
        <li>Pull its plug out of the wall, and lay the plug where you can see it.</li>
        <li>Let it cool. Where it smokes or glows, keep people away; burning: call the fire brigade.</li>
      </ol>
      <p>What carries mains voltage stays shut: that is for a qualified person, and by the rules where you live.</p>
      <button type="button" class="button button-main case-wide" onClick={() => props.onEntry({ kind: 'made safe' })}>
        It is off and unplugged
      </button>
    </div>
  );
}

function CheckStep(props: StepProps & { check: WordedInspection; children: Proposal | undefined }) {
  const records = useRecords();
  const navigate = useNavigate();
  const calculator = () => listed.find(({ id }) => id === props.check.calculator);
  const hazard = () => symptomOf(catalogue, props.case.symptom).hazard !== undefined;
  const openCheck = async (id: string) => {
    expectAnswer({ machine: props.case.machine, case: props.case.id, check: props.check.id });
    await records.choose(props.case.machine);
    navigate(`/check/${id}`);
  };
  const answers = () => (
    <div class="case-keys">
      <For each={props.check.answers}>
        {(answer) => (
          <button
            type="button"
            class="button case-answer"
            onClick={() => props.onEntry({ kind: 'answer', check: props.check.id, answer: answer.id })}
          >
            {answer.label}
          </button>
        )}
      </For>
    </div>
  );
  return (
    <>
      <p class="case-kicker">
        Next: {KINDS[props.check.kind]}, {minutesWords(props.check.minutes)},{' '}
        {props.check.toolNames.length > 0 ? props.check.toolNames.join(', ') : 'no tools'}
      </p>
      <h2>{props.check.title}</h2>
      <Show when={props.check.cautions.length > 0 || (hazard() && props.check.powered)}>
        <div class="cautions">
          <strong>First</strong>
          <ul>
            <Show when={hazard() && props.check.powered}>
              <li>This check needs power: plug in for it alone, stay beside it, and unplug again after it.</li>
            </Show>
            <For each={props.check.cautions}>{(caution) => <li>{caution}</li>}</For>
          </ul>
        </div>
      </Show>
      <ol>
        <For each={props.check.how}>{(line) => <li>{line}</li>}</For>
      </ol>
      <Show when={calculator()} fallback={answers()}>
        {(found) => (
          <>
            <button type="button" class="button button-main case-wide" onClick={() => void openCheck(found().id)}>
              Open the check: {titleOf(found().id)}
            </button>
            <p class="small faint">The reading kept there comes back as the answer.</p>
            <CaseReadings case={props.case} check={props.check} onEntry={(entry) => props.onEntry(entry)} />
            <Fold title="Answer without the check">{answers()}</Fold>
          </>
        )}
      </Show>
      <div class="row">
        <button type="button" class="button" onClick={() => props.onEntry({ kind: 'skip', check: props.check.id })}>
          Skip this check
        </button>
      </div>
      <Show when={props.children}>{(proposal) => <Why proposal={proposal()} check={props.check} />}</Show>
    </>
  );
}

/** Why this comes next, and what each answer would do. */
function Why(props: { proposal: Proposal; check?: WordedInspection }) {
  const after = () =>
    props.proposal.outlooks.flatMap(({ answer, chance, belief }) => {
      const [first] = belief.ranked;
      const said = props.check?.answers.find(({ id }) => id === answer);
      // What settles nothing leaves things as they are.
      const label = said?.id === 'unsure' || said?.verdict === 'too close' ? undefined : said?.label;
      const cause = catalogue.causes.find(({ id }) => id === first);
      if (label === undefined || !cause || first === undefined) return [];
      return [{ label, chance, first: cause.title, share: belief.causes[first] ?? 0 }];
    });
  return (
    <Fold title="Why this next" open>
      <For each={whyNext(catalogue, props.proposal)}>{(sentence) => <p>{sentence}</p>}</For>
      <Show when={after().length > 0}>
        <ul class="small case-after">
          <For each={after()}>
            {(one) => (
              <li>
                “{one.label}” ({percent(one.chance)}): then most suspected, {oddsWords(one.share)}: {lower(one.first)}.
              </li>
            )}
          </For>
        </ul>
      </Show>
      <p class="small faint">
        Shares, minutes and prices are common practice, no source. Suspicion by {printCitation(bayesSource)}; order by{' '}
        {orderSources.map(printCitation).join('; ')}.
      </p>
    </Fold>
  );
}
