/** Why the microphone cannot be had, or is no longer heard. */
export type MicrophoneTrouble =
  'not secure' | 'not supported' | 'refused' | 'none' | 'taken' | 'ended' | 'muted' | 'suspended' | 'failed';

const NAMES: Readonly<Record<string, MicrophoneTrouble>> = {
  NotAllowedError: 'refused',
  SecurityError: 'refused',
  NotFoundError: 'none',
  OverconstrainedError: 'none',
  NotReadableError: 'taken',
  AbortError: 'taken',
  TypeError: 'not supported',
};

/** Why getUserMedia was rejected, by the names of the Media Capture and Streams recommendation. */
export function troubleOf(error: unknown): MicrophoneTrouble {
  const name = typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
  return Object.hasOwn(NAMES, name) ? (NAMES[name] ?? 'failed') : 'failed';
}

/** What the phone does to the sound of its own accord, although asked not to. */
export type Meddling = 'gain control' | 'noise suppression' | 'echo cancelling';

/** What of it a track says is on. None of these is no proof: what the system does behind the browser cannot be seen. */
export function meddlingOf(settings: MediaTrackSettings): readonly Meddling[] {
  const on: Meddling[] = [];
  if (settings.autoGainControl === true) on.push('gain control');
  if (settings.noiseSuppression === true) on.push('noise suppression');
  // A string says which echoes: any of them is one too many.
  if (settings.echoCancellation !== undefined && settings.echoCancellation !== false) on.push('echo cancelling');
  return on;
}
