import { chime } from '../../../instrument/chime';
import { createEar } from '../sound/ear';
import { createTally } from './tally';

/** A listening: the microphone, and the plucks it heard. It ends when as many agree as are wanted. */
export function createListening() {
  const tally = createTally();
  const ear = createEar('plucks', (heard) => {
    if (heard.kind !== 'pluck') return;
    tally.add(heard.note);
    endIfEnough();
  });
  const endIfEnough = (): void => {
    if (ear.phase() === 'listening' && tally.isEnough()) ear.end('done', chime);
  };

  return {
    ear,
    tally,
    /** From a tap: listens, or listens on, until enough plucks agree. */
    start(): void {
      // Enough are there: a fresh set was asked for.
      if (tally.missing() === 0) tally.clear();
      ear.keepAwake();
      void ear.open();
    },
    stop(): void {
      ear.forgive();
      ear.end('stopped');
    },
    want(agreeing: number): void {
      tally.want(agreeing);
      endIfEnough();
    },
    /** Strikes a pluck off, or takes it back. */
    strike(number: number, struck: boolean): void {
      tally.strike(number, struck);
      endIfEnough();
    },
    /** Keeps one of two belts' plucks. */
    keepOnly(numbers: ReadonlySet<number>): void {
      tally.keepOnly(numbers);
      endIfEnough();
    },
    /** From a tap: a pluck has just sounded. */
    plucked: (): void => ear.plucked(),
  };
}

export type Listening = ReturnType<typeof createListening>;
