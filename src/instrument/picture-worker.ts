import { findRidges, readStrip, type GreyPicture, type StripReading } from '../signal/ridge';
import { hold, Stopped } from './picture-hold';
import { findRipples } from '../signal/ripple';
import { findSkew } from '../signal/sheet';
import type { Answer, FromWorker, Question, Task } from './picture-task';

let picture: GreyPicture | undefined;
const cancelled = new Set<number>();

// The types of a page's postMessage, which is not a worker's, ask for a target.
const answer = (message: FromWorker, transfer: Transferable[] = []): void => postMessage(message, { transfer });

async function open(file: Blob): Promise<void> {
  const held = await hold(file, (progress) => answer({ kind: 'progress', id: 0, progress }));
  picture = held.picture;
  answer({ kind: 'opened', id: 0, opened: held.opened }, [held.opened.preview]);
}

function find(held: GreyPicture, question: Question, reading: StripReading | undefined): Answer {
  if (question.of === 'sheet') return { of: 'sheet', finding: findSkew(held) };
  const { scale } = question;
  if (question.of === 'ripples') return { of: 'ripples', finding: findRipples(reading, scale, held) };
  return { of: 'ridges', finding: findRidges(reading, scale, question.options) };
}

async function analyse({ id, question }: Task & { kind: 'analyse' }): Promise<void> {
  const step = async (part: 'sampling' | 'fitting', done: number) => {
    answer({ kind: 'progress', id, progress: { part, done } });
    // A cancellation that came meanwhile is let in.
    await new Promise((resolve) => setTimeout(resolve, 0));
    return !cancelled.has(id);
  };
  if (!picture || !(await step('sampling', 0))) return;
  const reading = question.of === 'sheet' ? undefined : readStrip(picture, question.strip);
  if (!(await step('fitting', 0.3))) return;
  answer({ kind: 'finding', id, answer: find(picture, question, reading) });
}

addEventListener('message', ({ data }: MessageEvent<Task>) => {
  if (data.kind === 'cancel') {
    cancelled.add(data.id);
    return;
  }
  const id = data.kind === 'open' ? 0 : data.id;
  (data.kind === 'open' ? open(data.file) : analyse(data)).catch((error: unknown) => {
    answer({ kind: 'fault', id, fault: error instanceof Stopped ? error.fault : 'failed' });
  });
});
