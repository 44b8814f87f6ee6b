import { Show } from 'solid-js';

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
    <div class="stopwatch no-print" role="group" aria-label="Stopwatch">
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
                Start
              </button>
            }
          >
            <button type="button" class="button stopwatch-key" onClick={() => props.onEmpty()}>
              Take out the readings
            </button>
          </Show>
        }
      >
        <button type="button" class="button stopwatch-key" disabled={props.full} onClick={() => props.onNow()}>
          Now
        </button>
        <button type="button" class="button stopwatch-key" onClick={() => props.onStop()}>
          Stop
        </button>
      </Show>
    </div>
  );
}
