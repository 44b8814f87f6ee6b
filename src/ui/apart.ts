import { createComputed, createSignal, untrack, type Accessor } from 'solid-js';

/**
 * Follows a source; what hangs on it hears of it only when the value is another. A memo would do, but for what it costs: all
 * that hangs on a memo is looked through each time that its source changes, whether the memo did or not. Of a sheet's hundreds
 * of nodes a keystroke concerns a dozen.
 */
export function createApart<T>(source: Accessor<T>): Accessor<T> {
  const [value, setValue] = createSignal(untrack(source));
  createComputed(() => setValue(source));
  return value;
}
