import { createMemo, createSignal, on, onCleanup, untrack, type Accessor } from 'solid-js';

/** A page that is not painted has no frames to wait for. */
const NO_FRAME_MS = 250;

/** Runs something once the page has been painted, in a task of its own. @returns calls it off */
function afterPaint(run: () => void): () => void {
  let task: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    clearTimeout(task);
    task = setTimeout(run);
  });
  task = setTimeout(() => {
    cancelAnimationFrame(frame);
    run();
  }, NO_FRAME_MS);
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(task);
  };
}

/** A value that comes a frame behind its source. */
export interface Trailing<T> {
  readonly value: Accessor<T>;
  /** The source has gone on: what is shown of the value has to be marked (`aria-busy`) or taken away. */
  readonly late: Accessor<boolean>;
}

/**
 * Lets what costs more than a keystroke has come after the frame that shows the keystroke. It follows a source that never rests,
 * frame by frame.
 *
 * @param start what stands there before the first frame: the source's own value, or one that shows nothing
 */
export function createTrailing<T>(source: Accessor<T>, start: T): Trailing<T> {
  const [value, setValue] = createSignal(start, { equals: false });
  let callOff: (() => void) | undefined;
  const late = createMemo(
    on([source, value], ([now, then]) => {
      if (now === then) return false;
      callOff ??= afterPaint(() => {
        callOff = undefined;
        setValue(() => untrack(source));
      });
      return true;
    }),
  );
  onCleanup(() => callOff?.());
  return { value, late };
}
