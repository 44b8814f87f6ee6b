import { For, Show } from 'solid-js';
import { catalogue } from '../../diagnosis/catalogue';
import type { Letter } from '../../diagnosis/link';
import type { Logged } from '../../diagnosis/same';
import { entryWords } from './said';
import say from './words/en';
import { printTime } from '../desk/time';

/** What a letter says was done, and how it ended there. */
export function ArrivalEntries(props: { log: readonly Logged[]; closed: Letter['closed'] }) {
  const ended = () => Object.entries(say.ends).find(([how]) => how === props.closed?.how)?.[1];
  return (
    <Show when={props.log.length > 0 || props.closed} fallback={<p class="faint">{say.log.none}</p>}>
      <ol class="case-log">
        <For each={props.log}>{(entry) => <Line {...entryWords(catalogue, entry)} at={entry.at} />}</For>
        <Show when={props.closed}>
          {(closed) => (
            <Line what={say.arrival.closed} said={ended() ?? closed().how} at={closed().at} note={closed().proof} />
          )}
        </Show>
      </ol>
    </Show>
  );
}

function Line(props: { what: string; said: string; at: string; note: string }) {
  return (
    <li>
      {say.log.what(props.what)}
      <strong>{props.said}</strong>
      <br />
      <span class="small faint">
        {printTime(props.at)}
        <Show when={props.note}> · {props.note}</Show>
      </span>
    </li>
  );
}
