import { createMemo, For, Show } from 'solid-js';
import type { Ways } from '../../engine/ways';
import say from './words/en';
import './ways.css';

/** Several ways to the same end, one row of numbers each, and under it how it stands and what it takes. */
export function WaysTable(props: { ways: Ways }) {
  const span = createMemo(() => props.ways.columns.length + 1);
  return (
    <>
      <table class="ways">
        <thead>
          <tr>
            <th scope="col">{say.ways.way}</th>
            <For each={props.ways.columns}>{(column) => <th scope="col">{column}</th>}</For>
          </tr>
        </thead>
        <For each={props.ways.ways}>
          {(way) => (
            <tbody
              classList={{ 'way-advised': way.standing === 'advised', 'way-off': way.standing === 'not possible' }}
            >
              <tr>
                <th scope="row">{way.name}</th>
                <For each={way.facts}>{(fact) => <td>{fact}</td>}</For>
              </tr>
              <tr>
                <td colspan={span()} class="way-note">
                  <strong>{say.ways.standing[way.standing]}</strong> {way.why}
                  <Show when={way.standing !== 'not possible' && way.needs.length > 0}>
                    {' '}
                    {say.ways.takes(way.needs)}
                  </Show>
                </td>
              </tr>
            </tbody>
          )}
        </For>
      </table>
      <p class="small faint">{props.ways.note}</p>
    </>
  );
}
