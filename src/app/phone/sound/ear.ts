import { createSignal, onCleanup, onMount } from 'solid-js';
import type { Ear } from '../../../instrument/microphone-blocks';
import type { Meddling, MicrophoneTrouble } from '../../../instrument/microphone-trouble';
import type { Heard } from '../../../instrument/microphone-worker';
import { createHold, type LastSound } from './hold';

/** `away`: the page is out of sight; listening goes on when it is shown again. */
type Phase = 'idle' | 'opening' | 'listening' | 'away' | 'done' | 'stopped';

/** dB re full scale. */
export interface Level {
  readonly rms: number;
  readonly noise: number;
}

type Something = Exclude<Heard, { readonly kind: 'level' | 'rate' }>;

/**
 * The microphone of one panel, on only while it must be, and what is known of it.
 * @param onSomething gets what was listened for
 */
export function createEar(ear: Ear, onSomething: (heard: Something) => void) {
  const [phase, setPhase] = createSignal<Phase>('idle');
  const [trouble, setTrouble] = createSignal<MicrophoneTrouble>();
  const [meddling, setMeddling] = createSignal<readonly Meddling[]>([]);
  const [rateOff, setRateOff] = createSignal(false);
  const [level, setLevel] = createSignal<Level>();
  const hold = createHold(() => end('stopped'));

  const end = (to: 'done' | 'stopped', last?: LastSound): void => {
    hold.letGo(last);
    setLevel(undefined);
    setPhase(to);
  };
  const onHeard = (heard: Heard): void => {
    if (phase() !== 'listening') return;
    if (heard.kind === 'level') setLevel(heard);
    else if (heard.kind === 'rate') setRateOff(heard.off);
    else {
      if (heard.kind !== 'span') hold.waitOn();
      onSomething(heard);
    }
  };
  const onTrouble = (now: MicrophoneTrouble | undefined): void => {
    setTrouble(now);
    if (now === 'ended' || now === 'failed') end('stopped');
  };
  const open = async (): Promise<void> => {
    setLevel(undefined);
    setPhase('opening');
    setTrouble(undefined);
    const opened = await hold.open({ ear, onHeard, onTrouble });
    if (opened?.ok === false) {
      setTrouble(opened.trouble);
      end('stopped');
    } else if (opened) {
      setMeddling(opened.microphone.meddling);
      setPhase('listening');
      // Out of sight already: the question for permission took its time.
      onSeen();
    }
  };
  const onSeen = (): void => {
    if (document.visibilityState === 'hidden' && hold.hasMicrophone()) {
      hold.release();
      setLevel(undefined);
      setPhase('away');
    } else if (document.visibilityState === 'visible' && phase() === 'away') void open();
  };
  onMount(() => {
    document.addEventListener('visibilitychange', onSeen);
    onCleanup(() => document.removeEventListener('visibilitychange', onSeen));
  });
  onCleanup(() => end('stopped'));

  const isOn = () => phase() === 'opening' || phase() === 'listening' || phase() === 'away';
  const { keepAwake, resume, plucked } = hold;
  return {
    phase,
    trouble,
    meddling,
    rateOff,
    level,
    isOn,
    keepAwake,
    resume,
    plucked,
    open,
    end,
    forgive: () => setTrouble(),
  };
}

export type PanelEar = ReturnType<typeof createEar>;
