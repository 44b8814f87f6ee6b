import { onCleanup } from 'solid-js';

const HOLD_DELAY = 400;
const HOLD_EVERY = 70;

/** A key that nudges once on a tap and keeps nudging while held. */
export function NudgeKey(props: { label: string; sign: string; onNudge: () => void }) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = () => clearTimeout(timer);
  const again = () => {
    props.onNudge();
    timer = setTimeout(again, HOLD_EVERY);
  };
  const start = (event: PointerEvent) => {
    if (event.button !== 0) return;
    stop();
    props.onNudge();
    timer = setTimeout(again, HOLD_DELAY);
  };
  onCleanup(stop);
  return (
    <button
      type="button"
      aria-label={props.label}
      onPointerDown={start}
      onPointerUp={stop}
      onPointerLeave={stop}
      onPointerCancel={stop}
      onContextMenu={(event) => event.preventDefault()}
      // A click without a pointer comes from the keyboard or a screen reader.
      onClick={(event) => {
        if (event.detail === 0) props.onNudge();
      }}
    >
      {props.sign}
    </button>
  );
}
