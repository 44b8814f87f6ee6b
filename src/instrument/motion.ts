import type { Frame } from '../signal/level-watch';

export type MotionFault =
  | 'insecure' // the page did not come over a secure connection
  | 'unknown' // this browser has no motion events
  | 'barred' // the page that holds this one, or its server, keeps the sensor back
  | 'refused' // the person, or the browser's settings, said no
  | 'silent' // no numbers come: no sensor, or one kept back
  | 'stopped'; // numbers came, and stopped

export interface Motion {
  readonly close: () => void;
}

/** Two tenths of a second more than the slowest phones take to switch the sensor on. */
const FIRST_WORD_MS = 2500;
const FRAME_MS = 20;
/**
 * Acceleration comes all the time, so this many frames without it are its end; angles come only when they change. Counted,
 * not timed: a page held up for a while has the events still waiting.
 */
const LAST_WORD_FRAMES = 100;

interface Asking {
  requestPermission?: () => Promise<string>;
}
interface WithPolicy {
  featurePolicy?: { allowsFeature: (feature: string) => boolean };
}

/** Why there is no motion to be had, as far as is known before asking. */
function hindrance(): MotionFault | undefined {
  if (!window.isSecureContext) return 'insecure';
  if (!('DeviceMotionEvent' in window)) return 'unknown';
  const allowed = (document as WithPolicy).featurePolicy?.allowsFeature('accelerometer');
  return allowed === false ? 'barred' : undefined;
}

/** Asks where the browser wants to be asked. To be called straight from a tap. */
async function permitted(): Promise<boolean> {
  const events = [window.DeviceMotionEvent, window.DeviceOrientationEvent] as readonly (Asking | undefined)[];
  // Both at once: after the first wait the tap no longer counts.
  const answers = await Promise.all(events.map((event) => event?.requestPermission?.() ?? Promise.resolve('granted')));
  return answers.every((answer) => answer === 'granted');
}

/**
 * Starts the motion sensor and passes on frames, fifty a second, each with the newest numbers. To be called from a tap.
 * @param onFrame gets acceleration including gravity in m/s² in the phone's axes (x to the right, y to the earpiece, z out of
 *   the screen; sign as the browser has it) and attitude in degrees, whichever there are
 * @param onFault called once, after which no more frames come
 */
export function openMotion(onFrame: (frame: Frame) => void, onFault: (fault: MotionFault) => void): Motion {
  let acceleration: Frame['acceleration'];
  let attitude: Frame['attitude'];
  let unheard = 0;
  let timer: ReturnType<typeof setInterval> | undefined;
  let closed = false;

  const onMotion = (event: DeviceMotionEvent): void => {
    const { x, y, z } = event.accelerationIncludingGravity ?? {};
    if (typeof x !== 'number' || typeof y !== 'number' || typeof z !== 'number') return;
    acceleration = { x, y, z };
    unheard = 0;
  };
  const onTurn = (event: DeviceOrientationEvent): void => {
    const { alpha, beta, gamma } = event;
    if (beta === null || gamma === null) return;
    attitude = { alpha: alpha ?? Number.NaN, beta, gamma };
  };
  const close = (): void => {
    closed = true;
    clearInterval(timer);
    window.removeEventListener('devicemotion', onMotion);
    window.removeEventListener('deviceorientation', onTurn);
  };
  const fail = (fault: MotionFault): void => {
    if (closed) return;
    close();
    onFault(fault);
  };
  const start = (): void => {
    const since = performance.now();
    window.addEventListener('devicemotion', onMotion);
    window.addEventListener('deviceorientation', onTurn);
    timer = setInterval(() => {
      const now = performance.now();
      if (!acceleration && !attitude) {
        if (now - since > FIRST_WORD_MS) fail('silent');
        return;
      }
      // The sensor sleeps while the page is hidden; frames then would only repeat the last numbers.
      if (document.hidden) return;
      unheard += 1;
      if (acceleration && unheard > LAST_WORD_FRAMES) fail('stopped');
      else onFrame({ time: now / 1000, acceleration, attitude });
    }, FRAME_MS);
  };

  const fault = hindrance();
  if (fault) queueMicrotask(() => fail(fault));
  else {
    permitted().then(
      (yes) => {
        if (!yes) fail('refused');
        else if (!closed) start();
      },
      () => fail('refused'),
    );
  }
  return { close };
}
