import { Show } from 'solid-js';
import { A } from '@solidjs/router';
import { listed } from '../../engine/list';
import type { Reading } from '../../machine/schema';
import { verdictWords, VerdictMark, type MarkState } from '../../ui/verdict-mark';
import { printTime } from './time';

export const titleOf = (calculator: string): string =>
  listed.find((entry) => entry.id === calculator)?.title ?? calculator;

/** The verdict in a check's own words. */
export const verdictWord = (calculator: string, state: MarkState): string =>
  listed.find((entry) => entry.id === calculator)?.verdicts?.[state] ?? verdictWords[state];

/** Address of a reading's page. */
export const readingHref = ({ machine, at, id }: Pick<Reading, 'machine' | 'at' | 'id'>): string =>
  `/machines/${machine}/reading/${at}-${id}`;

/** A reading in a list: what it said, when, and what was noted. */
export function ReadingEntry(props: { reading: Reading }) {
  return (
    <A class="index-entry" href={readingHref(props.reading)}>
      <span>
        <strong>{titleOf(props.reading.calculator)}</strong>:{' '}
        {verdictWord(props.reading.calculator, props.reading.verdict).toLowerCase()}
        <br />
        <span class="small">{props.reading.order.sentence}</span>
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
