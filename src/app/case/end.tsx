import { Show } from 'solid-js';
import { A, useNavigate } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import { proofPhoto } from '../../machine/keys';
import type { Case } from '../../machine/schema';
import { LIMITS } from '../../machine/limits';
import say from './words/en';
import { useRecords } from '../desk/context';
import { readingHref } from '../desk/reading-entry';
import { ReadingPhoto } from '../desk/reading-photo';
import { printTime } from '../desk/time';
import { StopAt } from '../desk/stop';
import { createTypedText, OtherText } from '../desk/typed-text';

/** How a closed case ended, what shows it, and the key that opens it again. */
export function CaseClosed(props: { case: Case; closed: NonNullable<Case['closed']> }) {
  const records = useRecords();
  const reopen = () => void records.changeCase(props.case.machine, props.case.id, (old) => ({ ...old, closed: null }));
  return (
    <section class="case-step" aria-label={say.closed.title}>
      <p class="case-kicker">{say.closed.at(printTime(props.closed.at))}</p>
      <h2>{say.ends[props.closed.how]}</h2>
      <Show when={props.closed.proof}>
        <p>{props.closed.proof}</p>
      </Show>
      <Show when={props.closed.reading} keyed>
        {(reading) => (
          <p>
            <A href={readingHref({ machine: props.case.machine, ...reading })}>{say.closed.reading}</A>
          </p>
        )}
      </Show>
      <Show when={props.closed.how === 'cured' || props.closed.how === 'replaced'}>
        <ReadingPhoto
          reading={{ machine: props.case.machine, at: props.case.opened, id: proofPhoto(props.case.id) }}
          title={say.photo.reprint}
          ask={say.photo.askReprint}
          alt={say.photo.reprint}
        />
      </Show>
      <div class="case-keys section">
        <A class="button button-main case-wide" href={`/case/${props.case.machine}/${props.case.id}/sheet`}>
          {say.sheet.link}
        </A>
        <button type="button" class="button" onClick={reopen}>
          {say.closed.reopen}
        </button>
      </div>
    </section>
  );
}

/** Ends a case without a cure, or removes it. */
export function CaseEnd(props: { case: Case }) {
  const records = useRecords();
  const navigate = useNavigate();
  const words = createTypedText(() => ({ machine: props.case.machine, case: props.case.id, field: 'end' }));
  const end = async (how: 'handed over' | 'given up') => {
    const closed = { at: new Date().toISOString(), how, proof: words.text().trim() };
    if (await records.changeCase(props.case.machine, props.case.id, (old) => ({ ...old, closed }))) await words.used();
  };
  return (
    <>
      <label>
        {say.end.words}
        <textarea
          class="text-input"
          rows="2"
          maxlength={LIMITS.line}
          value={words.text()}
          onInput={(event) => words.type(event.currentTarget.value)}
        />
      </label>
      <OtherText typed={words} />
      <StopAt text={words.text()} />
      <div class="row section">
        <button type="button" class="button" onClick={() => void end('handed over')}>
          {say.end.handOver}
        </button>
        <button type="button" class="button" onClick={() => void end('given up')}>
          {say.end.giveUp}
        </button>
        <RemoveCase case={props.case} onGone={() => navigate(`/machines/${props.case.machine}`)} />
      </div>
    </>
  );
}

/** Removes a case; what was removed can be put back. */
export function RemoveCase(props: { case: Case; onGone: () => void }) {
  const records = useRecords();
  const remove = async () => {
    const title = catalogue.symptoms.find(({ id }) => id === props.case.symptom) ?? { title: props.case.symptom };
    if (await records.removeCase(props.case.machine, props.case.id, title.title)) props.onGone();
  };
  return (
    <button type="button" class="button" onClick={() => void remove()}>
      {say.end.remove}
    </button>
  );
}
