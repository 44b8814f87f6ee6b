import type { RidgeFinding, RidgeOptions, Scale, Strip } from '../signal/ridge';
import type { RippleFinding } from '../signal/ripple';
import type { SheetFinding } from '../signal/sheet';
import type { Answer, FromWorker, Opened, PictureFault, Progress, Question, Task } from './picture-task';

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
  readonly ridges: (
    strip: Strip,
    scale: Scale,
    options: RidgeOptions,
    signal?: AbortSignal,
    onProgress?: OnProgress,
  ) => Promise<RidgeFinding>;
  /** The same for ripples that die away. */
  readonly ripples: (
    strip: Strip,
    scale: Scale,
    signal?: AbortSignal,
    onProgress?: OnProgress,
  ) => Promise<RippleFinding>;
  /** Finds a sheet in the whole picture, and how square a part on it is. */
  readonly sheet: (signal?: AbortSignal, onProgress?: OnProgress) => Promise<SheetFinding>;
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

function isOf<K extends Answer['of']>(answer: Answer, of: K): answer is Answer & { of: K } {
  return answer.of === of;
}

/** The answer to a question of this kind. */
function ofKind<K extends Answer['of']>(of: K, answer: Answer): Answer & { of: K } {
  if (!isOf(answer, of)) throw new PictureError('failed');
  return answer;
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
  const put = async (question: Question, stop: AbortSignal | undefined, tell: OnProgress | undefined) => {
    count += 1;
    const told = await ask(count, { kind: 'analyse', id: count, question }, tell, stop);
    if (told.kind !== 'finding') throw new PictureError('failed');
    return told.answer;
  };
  try {
    const answer = await ask(0, { kind: 'open', file }, onProgress, signal);
    if (answer.kind !== 'opened') throw new PictureError('failed');
    return {
      ...answer.opened,
      ridges: async (strip, scale, options, stop, tell) =>
        ofKind('ridges', await put({ of: 'ridges', strip, scale, options }, stop, tell)).finding,
      ripples: async (strip, scale, stop, tell) =>
        ofKind('ripples', await put({ of: 'ripples', strip, scale }, stop, tell)).finding,
      sheet: async (stop, tell) => ofKind('sheet', await put({ of: 'sheet' }, stop, tell)).finding,
      close: () => end(aborted()),
    };
  } catch (error) {
    end(aborted());
    throw error;
  }
}
