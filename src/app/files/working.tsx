import { createSignal, Show } from 'solid-js';
import { Cancelled, type Watch } from '../../machine/steps';
import say from './words/en';

/** One long piece of work at a time: what is done, how far it is, and a way to end it. */
export function createWork() {
  const [said, setSaid] = createSignal('');
  const [share, setShare] = createSignal(0);
  let controller: AbortController | undefined;
  return {
    /** What is being done, in words; empty while nothing is. */
    said,
    share,
    busy: () => said() !== '',
    stop: () => controller?.abort(),
    begin: (words: string): Watch => {
      controller = new AbortController();
      setShare(0);
      setSaid(words);
      return { tell: setShare, signal: controller.signal };
    },
    /** Waits for what was begun. @returns undefined where the person ended it */
    end: async <T,>(work: Promise<T>): Promise<T | undefined> => {
      try {
        return await work;
      } catch (error) {
        if (error instanceof Cancelled) return undefined;
        throw error;
      } finally {
        setSaid('');
      }
    },
  };
}

/** How far the work is, with the key that ends it; nothing while there is none. */
export function Working(props: { work: ReturnType<typeof createWork> }) {
  return (
    <Show when={props.work.busy()}>
      <div class="row">
        <progress class="working-share" max={1} value={props.work.share()} aria-label={props.work.said()} />
        <button type="button" class="button" onClick={() => props.work.stop()}>
          {say.stop}
        </button>
      </div>
    </Show>
  );
}
