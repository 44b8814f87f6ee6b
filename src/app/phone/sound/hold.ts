import { openMicrophone, type Hearing, type Microphone, type Opened } from '../../../instrument/microphone';
import { keepAwake } from '../../../instrument/wake-lock';

/** What still sounds while the microphone goes. */
export type LastSound = Parameters<Microphone['close']>[0];

/** Minutes of silence after which the microphone and the screen are let go. */
const PATIENCE_MIN = 5;

/**
 * What a listening holds of the phone: its microphone, and its screen kept on.
 * @param onSilence nothing was heard for so long that all of it should be let go
 */
export function createHold(onSilence: () => void) {
  let microphone: Microphone | undefined;
  let asking: AbortController | undefined;
  let letSleep: (() => void) | undefined;
  let patience: ReturnType<typeof setTimeout> | undefined;

  const release = (last?: LastSound): void => {
    asking?.abort();
    microphone?.close(last);
    asking = undefined;
    microphone = undefined;
    clearTimeout(patience);
  };
  const waitOn = (): void => {
    clearTimeout(patience);
    patience = setTimeout(onSilence, PATIENCE_MIN * 60e3);
  };

  return {
    hasMicrophone: () => microphone !== undefined,
    /** Asks for the microphone; undefined where nobody waits for it any more by the time it comes. */
    async open(hearing: Hearing): Promise<Opened | undefined> {
      release();
      const controller = new AbortController();
      asking = controller;
      const opened = await openMicrophone(hearing, controller.signal);
      if (controller.signal.aborted) {
        if (opened.ok) opened.microphone.close();
        return undefined;
      }
      if (!opened.ok) return opened;
      microphone = opened.microphone;
      waitOn();
      return opened;
    },
    /** From a tap: starts what the phone held back. */
    resume: (): void => microphone?.resume(),
    /** A pluck has just sounded: it is looked for. */
    plucked: (): void => microphone?.plucked(),
    /** Something was heard: the wait for silence begins anew. */
    waitOn,
    /** From a tap: keeps the screen on. */
    keepAwake: (): void => {
      letSleep ??= keepAwake();
    },
    /** Gives the microphone back. */
    release,
    /** Gives everything back. */
    letGo: (last?: LastSound): void => {
      release(last);
      letSleep?.();
      letSleep = undefined;
    },
  };
}
