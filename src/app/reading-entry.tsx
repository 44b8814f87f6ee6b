import { Show } from 'solid-js';
import { A } from '@solidjs/router';
import { listed } from '../calculators/list';
import type { Reading } from '../machine/schema';
import { verdictWords, VerdictMark } from '../ui/verdict-mark';
import { printTime } from './print';

export const titleOf = (calculator: string): string =>
  listed.find((entry) => entry.id === calculator)?.title ?? calculator;

/** Address of a reading's page. */
export const readingHref = ({ machine, at, id }: Pick<Reading, 'machine' | 'at' | 'id'>): string =>
  `/machines/${machine}/reading/${at}-${id}`;

/** A reading in a list: what it said, when, and what was noted. */
export function ReadingEntry(props: { reading: Reading }) {
  return (
    <A class="index-entry" href={readingHref(props.reading)}>
      <span>
        <strong>{titleOf(props.reading.calculator)}</strong>: {verdictWords[props.reading.verdict].toLowerCase()}
        <br />
        <span class="small">{props.reading.headline}</span>
        <br />
        <span class="faint small">
          {printTime(props.reading.at)}
          <Show when={props.reading.note}> · {props.reading.note}</Show>
        </span>
      </span>
      <VerdictMark state={props.reading.verdict} />
    </A>
  );
}
