import { createMemo, createSignal } from 'solid-js';
import { countClicks, isFaint } from '../../../signal/click-count';
import type { Click } from '../../../signal/click-watch';
import { createEar } from '../sound/ear';

/** Shorter than this, s, a count says nothing. */
const LEAST = 3;
/** From this share on other sounds are said to have hidden ticks. */
const HIDDEN = 0.1;

/** A listening: the microphone, the ticks it heard and for how long. It ends when it is told to. */
export function createCounting() {
  const [clicks, setClicks] = createSignal<readonly Click[]>([]);
  const [spans, setSpans] = createSignal({ seconds: 0, masked: 0 });
  const ear = createEar('clicks', (heard) => {
    if (heard.kind === 'click') setClicks((before) => [...before, heard.click]);
    else if (heard.kind === 'span')
      setSpans(({ seconds, masked }) => ({
        seconds: seconds + heard.seconds,
        masked: masked + (heard.isMasked ? heard.seconds : 0),
      }));
  });
  const seconds = () => spans().seconds;
  const counted = createMemo(() => countClicks(clicks(), spans().seconds, spans().masked));
  return {
    ear,
    clicks,
    seconds,
    counted,
    isLongEnough: () => seconds() >= LEAST,
    isFaint: () => isFaint(clicks()),
    isMasked: () => spans().masked > HIDDEN * seconds(),
    /** From a tap: a fresh count. */
    start(): void {
      setClicks([]);
      setSpans({ seconds: 0, masked: 0 });
      ear.keepAwake();
      void ear.open();
    },
    stop(): void {
      ear.forgive();
      ear.end('stopped');
    },
  };
}

export type Counting = ReturnType<typeof createCounting>;
