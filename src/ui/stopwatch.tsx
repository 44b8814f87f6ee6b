import { Show } from 'solid-js';
import say from './words/en';

interface StopwatchProps {
  /** As shown: `1:05.3`. */
  shown: string;
  running: boolean;
  /** There are times in the table: a new start would not belong to them. */
  used: boolean;
  full: boolean;
  onStart: () => void;
  onNow: () => void;
  onStop: () => void;
  onEmpty: () => void;
}

/** A stopwatch over a table of readings, with keys for a thumb that does not look. */
export function Stopwatch(props: StopwatchProps) {
  return (
    <div class="stopwatch no-print" role="group" aria-label={say.stopwatch.title}>
      <output class="stopwatch-time" aria-live="off">
        {props.shown}
      </output>
      <Show
        when={props.running}
        fallback={
          <Show
            when={props.used}
            fallback={
              <button type="button" class="button stopwatch-key" onClick={() => props.onStart()}>
                {say.stopwatch.start}
              </button>
            }
          >
            <button type="button" class="button stopwatch-key" onClick={() => props.onEmpty()}>
              {say.stopwatch.empty}
            </button>
          </Show>
        }
      >
        <button type="button" class="button stopwatch-key" disabled={props.full} onClick={() => props.onNow()}>
          {say.stopwatch.now}
        </button>
        <button type="button" class="button stopwatch-key" onClick={() => props.onStop()}>
          {say.stopwatch.stop}
        </button>
      </Show>
    </div>
  );
}
