import { createSignal, onCleanup } from 'solid-js';
import { openPicture, type OpenPicture, type Progress } from '../../../instrument/picture';
import { troubleOf } from './trouble';
import say from './words/en';

/** One picture at a time, opened in the background; the one before is closed, and the last with its owner. */
export function createOpening() {
  const [picture, setPicture] = createSignal<OpenPicture>();
  const [progress, setProgress] = createSignal<Progress>();
  const [trouble, setTrouble] = createSignal<string>();
  let running: AbortController | undefined;

  const put = (next: OpenPicture | undefined) => {
    const before = picture();
    setPicture(() => next);
    before?.close();
    before?.preview.close();
  };
  onCleanup(() => {
    running?.abort();
    put(undefined);
  });

  const open = async (file: File): Promise<void> => {
    running?.abort();
    const stop = new AbortController();
    running = stop;
    setTrouble(undefined);
    setProgress({ part: 'decoding', done: 0 });
    try {
      const opened = await openPicture(file, stop.signal, setProgress);
      if (running === stop && !stop.signal.aborted) put(opened);
      else {
        opened.close();
        opened.preview.close();
      }
    } catch (error) {
      if (running === stop) setTrouble(troubleOf(error, say.cancelled.reading));
    } finally {
      if (running === stop) setProgress(undefined);
    }
  };
  return { picture, progress, trouble, open, stop: () => running?.abort() };
}
