import { PLUCKED, PROCESSOR, type Ear, type Opening } from './microphone-blocks';
import { meddlingOf, troubleOf, type Meddling, type MicrophoneTrouble } from './microphone-trouble';
import type { Heard } from './microphone-worker';
// Vite compiles and places a worklet only when it is asked for as a worker's address.
import workletAddress from './microphone-worklet.ts?worker&url';

/** A context that has not started by then waits for a tap. */
const START_MS = 1500;

const WANTED: MediaStreamConstraints = {
  audio: { autoGainControl: false, echoCancellation: false, noiseSuppression: false, channelCount: 1 },
};

/** A microphone that is being listened to. */
export interface Microphone {
  readonly meddling: readonly Meddling[];
  /** After a tap: starts a context that the phone held back. */
  resume(): void;
  /** A pluck has just sounded: it is looked for however soft it was. */
  plucked(): void;
  /** Stops listening at once; `last` may still sound before the context goes. */
  close(last?: (context: AudioContext) => Promise<void>): void;
}

export interface Hearing {
  readonly ear: Ear;
  onHeard(heard: Heard): void;
  /** undefined: the trouble is over. After `ended` and `failed` the microphone is closed. */
  onTrouble(trouble: MicrophoneTrouble | undefined): void;
}

export type Opened =
  { readonly ok: true; readonly microphone: Microphone } | { readonly ok: false; readonly trouble: MicrophoneTrouble };

/** The track of the microphone, its sound untouched as far as the phone allows. */
async function trackOf(): Promise<MediaStreamTrack | MicrophoneTrouble> {
  if (!isSecureContext) return 'not secure';
  // Absent in old browsers, whatever the types say.
  const devices = navigator.mediaDevices as MediaDevices | undefined;
  if (!devices || typeof AudioWorkletNode === 'undefined') return 'not supported';
  try {
    const stream = await devices.getUserMedia(WANTED);
    return stream.getAudioTracks()[0] ?? 'none';
  } catch (error) {
    return troubleOf(error);
  }
}

/**
 * Asks for the microphone and listens in a worker: samples go from the audio thread straight there, never by the page.
 * To be called from a tap. What is heard and what goes wrong later is told to `hearing`.
 * @param signal aborted when nobody waits any more: the microphone is given back at once
 */
export async function openMicrophone(hearing: Hearing, signal: AbortSignal): Promise<Opened> {
  const track = await trackOf();
  if (typeof track === 'string') return { ok: false, trouble: track };
  // Only now: a context made before the microphone is on may keep a rate that is no longer the phone's.
  const context = new AudioContext({ latencyHint: 'balanced' });
  const worker = new Worker(new URL('./microphone-worker.ts', import.meta.url), { type: 'module' });
  let closed = false;
  const close: Microphone['close'] = (last) => {
    if (closed) return;
    closed = true;
    context.onstatechange = null;
    track.onended = track.onmute = track.onunmute = null;
    track.stop();
    worker.terminate();
    void (last?.(context) ?? Promise.resolve()).finally(() => context.close());
  };
  const fail = (trouble: MicrophoneTrouble): Opened => {
    close();
    return { ok: false, trouble };
  };
  try {
    await context.audioWorklet.addModule(workletAddress);
  } catch {
    return fail('failed');
  }
  if (signal.aborted) return fail('ended');

  const node = new AudioWorkletNode(context, PROCESSOR, { channelCount: 1, channelCountMode: 'explicit' });
  const { port1, port2 } = new MessageChannel();
  node.port.postMessage(port1, [port1]);
  const opening: Opening = { ear: hearing.ear, port: port2, rate: context.sampleRate };
  worker.postMessage(opening, [port2]);
  // Its output is silence: some browsers run only what leads to the loudspeaker.
  context
    .createMediaStreamSource(new MediaStream([track]))
    .connect(node)
    .connect(context.destination);

  const state = (): MicrophoneTrouble | undefined =>
    context.state !== 'running' ? 'suspended' : track.muted ? 'muted' : undefined;
  const tell = (): void => {
    if (!closed) hearing.onTrouble(state());
  };
  const lose = (trouble: MicrophoneTrouble) => (): void => {
    close();
    hearing.onTrouble(trouble);
  };
  worker.onmessage = ({ data }: MessageEvent<Heard>) => hearing.onHeard(data);
  worker.onerror = lose('failed');
  node.onprocessorerror = lose('failed');
  track.onended = lose('ended');
  track.onmute = track.onunmute = tell;
  context.onstatechange = tell;
  const start = (): void => void context.resume().then(tell, tell);
  const plucked = (): void => worker.postMessage(PLUCKED);
  start();
  setTimeout(tell, START_MS);
  return { ok: true, microphone: { meddling: meddlingOf(track.getSettings()), resume: start, plucked, close } };
}
