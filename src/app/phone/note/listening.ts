import { createMemo, createSignal, onCleanup, onMount } from 'solid-js';
import { chime } from '../../../instrument/chime';
import { openMicrophone, type Microphone } from '../../../instrument/microphone';
import type { Meddling, MicrophoneTrouble } from '../../../instrument/microphone-trouble';
import type { Heard } from '../../../instrument/microphone-worker';
import { keepAwake } from '../../../instrument/wake-lock';
import type { NoteFound, NoteRefused } from '../../../signal/note';
import { combinePlucks } from '../../../signal/pluck-set';

/** `away`: the page is out of sight; listening goes on when it is shown again. */
export type Phase = 'idle' | 'opening' | 'listening' | 'away' | 'done' | 'stopped';

/** One pluck that was heard. */
export interface Pluck {
  /** Counts from 1, as they came. */
  readonly number: number;
  readonly note: NoteFound | NoteRefused;
  readonly struck: boolean;
}

export interface Level {
  readonly rms: number;
  readonly noise: number;
}

/**
 * Share by which a phone's sample clock may be off, and every note with it, however well the plucks agree: 100 parts in a
 * million covers the crystal and its warmth (common practice, no source).
 */
const CLOCK = 1e-4;

/** Minutes of silence after which the microphone and the screen are let go. */
const PATIENCE_MIN = 5;

/** The state of one listening: a microphone that is on only while it must be, and the plucks it heard. */
export function createListening() {
  const [phase, setPhase] = createSignal<Phase>('idle');
  const [trouble, setTrouble] = createSignal<MicrophoneTrouble>();
  const [meddling, setMeddling] = createSignal<readonly Meddling[]>([]);
  const [rateOff, setRateOff] = createSignal(false);
  const [level, setLevel] = createSignal<Level>();
  const [plucks, setPlucks] = createSignal<readonly Pluck[]>([]);
  const [wanted, setWanted] = createSignal(5);

  /** The plucks that gave a note and were not struck off, and what they come to. */
  const combined = createMemo(() => {
    const taken = plucks().flatMap(({ number, note, struck }) =>
      note.status === 'found' && !struck ? [{ number, note }] : [],
    );
    const result = combinePlucks(taken.map(({ note }) => note));
    const numbers = (places: readonly number[]) =>
      new Set(places.flatMap((place) => ((pluck) => (pluck ? [pluck.number] : []))(taken[place])));
    const used = numbers(result.used);
    if (result.status !== 'found') return { used, found: undefined };
    const { frequency, halfWidth } = result;
    return { used, found: { frequency, halfWidth: Math.hypot(halfWidth, CLOCK * frequency) } };
  });

  let microphone: Microphone | undefined;
  let asking: AbortController | undefined;
  let letSleep: (() => void) | undefined;
  let patience: ReturnType<typeof setTimeout> | undefined;

  const release = (last?: Parameters<Microphone['close']>[0]): void => {
    asking?.abort();
    microphone?.close(last);
    asking = undefined;
    microphone = undefined;
    setLevel(undefined);
    clearTimeout(patience);
  };
  const end = (to: Phase, last?: Parameters<Microphone['close']>[0]): void => {
    release(last);
    letSleep?.();
    letSleep = undefined;
    setPhase(to);
  };
  const waitOn = (): void => {
    clearTimeout(patience);
    patience = setTimeout(() => end('stopped'), PATIENCE_MIN * 60e3);
  };
  const finishIfEnough = (): void => {
    const { found, used } = combined();
    if (phase() === 'listening' && found && used.size >= wanted()) end('done', chime);
  };

  const onHeard = (heard: Heard): void => {
    if (phase() !== 'listening') return;
    if (heard.kind === 'level') setLevel(heard);
    else if (heard.kind === 'rate') setRateOff(heard.off);
    else {
      waitOn();
      setPlucks((before) => [...before, { number: before.length + 1, note: heard.note, struck: false }]);
      finishIfEnough();
    }
  };
  const onTrouble = (now: MicrophoneTrouble | undefined): void => {
    setTrouble(now);
    if (now === 'ended' || now === 'failed') end('stopped');
  };

  const open = async (): Promise<void> => {
    release();
    setPhase('opening');
    setTrouble(undefined);
    const controller = new AbortController();
    asking = controller;
    const opened = await openMicrophone({ onHeard, onTrouble }, controller.signal);
    if (controller.signal.aborted) {
      if (opened.ok) opened.microphone.close();
      return;
    }
    if (!opened.ok) {
      setTrouble(opened.trouble);
      end('stopped');
      return;
    }
    microphone = opened.microphone;
    setMeddling(opened.microphone.meddling);
    setPhase('listening');
    waitOn();
    // Out of sight already: the question for permission took its time.
    onSeen();
  };

  const onSeen = (): void => {
    if (document.visibilityState === 'hidden' && microphone) {
      release();
      setPhase('away');
    } else if (document.visibilityState === 'visible' && phase() === 'away') void open();
  };
  onMount(() => {
    document.addEventListener('visibilitychange', onSeen);
    onCleanup(() => document.removeEventListener('visibilitychange', onSeen));
  });
  onCleanup(() => end('stopped'));

  return {
    phase,
    trouble,
    meddling,
    rateOff,
    level,
    plucks,
    wanted,
    combined,
    /** From a tap: listens, or listens on, until enough plucks agree. */
    start(): void {
      letSleep ??= keepAwake();
      void open();
    },
    stop(): void {
      setTrouble(undefined);
      end('stopped');
    },
    /** From a tap: starts what the phone held back. */
    resume: (): void => microphone?.resume(),
    want(count: number): void {
      setWanted(count);
      finishIfEnough();
    },
    /** Strikes a pluck off, or takes it back. */
    strike(number: number, struck: boolean): void {
      setPlucks((before) => before.map((pluck) => (pluck.number === number ? { ...pluck, struck } : pluck)));
      finishIfEnough();
    },
    forget(): void {
      setPlucks([]);
      if (phase() === 'done') setPhase('stopped');
    },
  };
}

export type Listening = ReturnType<typeof createListening>;
