import type { RidgeFinding, RidgeOptions, Scale, Strip } from '../signal/ridge';
import type { FromWorker, Opened, PictureFault, Progress, Task } from './picture-task';

export type { PictureFault, Progress } from './picture-task';

export type OnProgress = (progress: Progress) => void;

/** Why a picture cannot be used; the screen has the words for each fault. */
export class PictureError extends Error {
  override readonly name = 'PictureError';

  constructor(readonly fault: PictureFault) {
    super(fault);
  }
}

/** A picture held in the background; every coordinate is in its pixels, `width` by `height`, upright. */
export interface OpenPicture extends Opened {
  /**
   * Reads a strip in full resolution and looks for ridges.
   * @throws DOMException AbortError where `signal` says so or the picture is closed; PictureError
   */
  readonly analyse: (
    strip: Strip,
    scale: Scale,
    options: RidgeOptions,
    signal?: AbortSignal,
    onProgress?: OnProgress,
  ) => Promise<RidgeFinding>;
  /** Ends the worker and frees the picture; the preview stays the caller's. */
  readonly close: () => void;
}

/** One thing asked of the worker. */
interface Waiting {
  readonly onProgress: OnProgress | undefined;
  readonly resolve: (answer: FromWorker & { kind: 'opened' | 'finding' }) => void;
  readonly reject: (reason: Error) => void;
}

const aborted = () => new DOMException('Stopped.', 'AbortError');

/** A worker that answers by number. */
function startWorker() {
  const worker = new Worker(new URL('./picture-worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, Waiting>();
  const end = (reason: Error) => {
    worker.terminate();
    waiting.forEach(({ reject }) => reject(reason));
    waiting.clear();
  };
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    const asked = waiting.get(data.id);
    if (data.kind === 'progress') {
      asked?.onProgress?.(data.progress);
      return;
    }
    waiting.delete(data.id);
    if (data.kind === 'fault') asked?.reject(new PictureError(data.fault));
    else asked?.resolve(data);
  };
  worker.onerror = () => end(new PictureError('failed'));
  const ask = (id: number, task: Task, onProgress: OnProgress | undefined, signal: AbortSignal | undefined) =>
    new Promise<FromWorker & { kind: 'opened' | 'finding' }>((resolve, reject) => {
      if (signal?.aborted) {
        reject(aborted());
        return;
      }
      const stop = () => {
        waiting.delete(id);
        worker.postMessage({ kind: 'cancel', id } satisfies Task);
        reject(aborted());
      };
      signal?.addEventListener('abort', stop, { once: true });
      const over = () => signal?.removeEventListener('abort', stop);
      waiting.set(id, {
        onProgress,
        resolve: (answer) => {
          over();
          resolve(answer);
        },
        reject: (reason) => {
          over();
          reject(reason);
        },
      });
      worker.postMessage(task);
    });
  return { ask, end };
}

/**
 * Opens a picture in a worker of its own; the page only passes the file on and gets the preview.
 * @param signal stops the opening and frees what was read
 * @throws DOMException AbortError where `signal` says so; PictureError
 */
export async function openPicture(file: Blob, signal?: AbortSignal, onProgress?: OnProgress): Promise<OpenPicture> {
  if (typeof Worker === 'undefined' || typeof OffscreenCanvas === 'undefined') throw new PictureError('no-background');
  const { ask, end } = startWorker();
  let count = 0;
  try {
    const answer = await ask(0, { kind: 'open', file }, onProgress, signal);
    if (answer.kind !== 'opened') throw new PictureError('failed');
    return {
      ...answer.opened,
      analyse: async (strip, scale, options, stop, tell) => {
        count += 1;
        const found = await ask(count, { kind: 'analyse', id: count, strip, scale, options }, tell, stop);
        if (found.kind !== 'finding') throw new PictureError('failed');
        return found.finding;
      },
      close: () => end(aborted()),
    };
  } catch (error) {
    end(aborted());
    throw error;
  }
}
