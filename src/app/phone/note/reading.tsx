import { Match, Show, Switch } from 'solid-js';
import { formatMeasured } from '../../../quantity/format';
import { frequency } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import { printFate, printNote } from './fate';
import type { Listening } from './listening';
import { A } from '@solidjs/router';
import { NoteTwo } from './two';
import say from './words/en';

/** The check of a belt's tension, by pressing its middle. */
const PRESS = '/check/belt-tension?v=1&by=press';

/** How far the listening is, and the note that the plucks agree on. */
export function NoteReading(props: { listening: Listening; mark: DecimalMark }) {
  const tally = () => props.listening.tally;
  const phase = () => props.listening.ear.phase();
  const last = () => {
    const pluck = tally().plucks().at(-1);
    if (!pluck) return '';
    if (pluck.note.status === 'refused') return say.refusal[pluck.note.reason].advice;
    return say.reading.last(
      pluck.number,
      printNote(pluck, props.mark),
      printFate(pluck, tally().combined(), props.mark),
    );
  };
  const off = () =>
    tally().plucks().length > 0 ? say.reading.offAt(tally().count(), tally().wanted()) : say.reading.off;
  return (
    <section class="note-reading" role="status" aria-label={say.reading.label}>
      <p class="ear-phase">
        <Switch fallback={off()}>
          <Match when={phase() === 'opening'}>{say.reading.opening}</Match>
          <Match when={phase() === 'listening'}>
            <b>{say.reading.at(tally().count(), tally().wanted())}</b>{' '}
            {tally().count() === 0 ? say.reading.first : say.reading.next}
          </Match>
          <Match when={phase() === 'away'}>{say.reading.away}</Match>
          <Match when={phase() === 'done' && tally().missing() === 0}>{say.reading.done(tally().count())}</Match>
        </Switch>
      </p>
      <Show when={tally().combined().found}>
        {(note) => (
          <p class="ear-result">
            {formatMeasured(note().frequency, note().halfWidth, frequency.Hz.unit, { mark: props.mark })}{' '}
            <span class="small faint">{say.reading.interval(tally().count())}</span>
          </p>
        )}
      </Show>
      <Show when={tally().combined().two.length > 0}>
        <NoteTwo listening={props.listening} mark={props.mark} />
      </Show>
      <Show when={tally().plucks().length > 0 && !tally().combined().found && tally().combined().two.length === 0}>
        <p>{say.reading.noneYet}</p>
      </Show>
      <Show when={tally().isDumb()}>
        <p class="due small">
          {say.press.sentence} <A href={PRESS}>{say.press.link}</A>
        </p>
      </Show>
      <Show when={phase() === 'listening' && last()}>
        <p class="small">{last()}</p>
      </Show>
    </section>
  );
}
