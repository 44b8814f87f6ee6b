import { createSignal } from 'solid-js';
import { HANDLE_RADIUS } from './handle-place';
import type { Stage } from './picture-stage';
import { panned, pinched, toPicture, turned, zoomed, type Spot } from './view-transform';

/** A handle as it lies on the screen: its own middle, and the point it holds. */
export interface PlacedHandle<Id extends string> {
  readonly id: Id;
  readonly spot: Spot;
  readonly point: Spot;
}

/** A handle under a finger: the finger, and from the finger to the point it holds. */
export interface Held<Id extends string> {
  readonly id: Id;
  readonly finger: Spot;
  readonly offset: Spot;
}

/** What a thumb may miss a handle by. */
const MISS = 6;
const WHEEL = 0.0015;
const LINE = 16;
const DEGREE = Math.PI / 180;

type On = PointerEvent & { currentTarget: Element };

const spotOf = (event: MouseEvent & { currentTarget: Element }): Spot => {
  const { left, top } = event.currentTarget.getBoundingClientRect();
  const { clientLeft, clientTop } = event.currentTarget;
  return { x: event.clientX - left - clientLeft, y: event.clientY - top - clientTop };
};

/**
 * Fingers, mouse and keys on a picture. One finger moves a handle, or the picture; two turn, zoom and move it. A mouse
 * turns it with the shift key held and zooms with its wheel.
 */
export function createGestures<Id extends string>(options: {
  readonly stage: Stage;
  readonly handles: () => readonly PlacedHandle<Id>[];
  /** A handle was brought to a place in the picture. */
  readonly onHandle: (id: Id, to: Spot) => void;
  readonly onPick: (id: Id) => void;
  readonly onNudge: (by: Spot) => void;
}) {
  const { stage } = options;
  const fingers = new Map<number, Spot>();
  const [grip, setGrip] = createSignal<Held<Id>>();

  const handleUnder = (finger: Spot): PlacedHandle<Id> | undefined => {
    const near = options
      .handles()
      .map((handle) => ({ handle, away: Math.hypot(handle.spot.x - finger.x, handle.spot.y - finger.y) }))
      .filter(({ away }) => away <= HANDLE_RADIUS + MISS)
      .sort((a, b) => a.away - b.away);
    return near[0]?.handle;
  };

  const down = (event: On): void => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const finger = spotOf(event);
    fingers.set(event.pointerId, finger);
    setGrip(undefined);
    if (fingers.size > 1) return;
    const handle = handleUnder(finger);
    if (!handle) return;
    const { id, point } = handle;
    options.onPick(id);
    setGrip({ id, finger, offset: { x: point.x - finger.x, y: point.y - finger.y } });
  };

  const move = (event: On): void => {
    const before = fingers.get(event.pointerId);
    if (!before) return;
    const finger = spotOf(event);
    const [one, two] = fingers.keys();
    const was = [...fingers.values()];
    fingers.set(event.pointerId, finger);
    const now = [...fingers.values()];
    const held = grip();
    if (held) {
      setGrip({ ...held, finger });
      const to = { x: finger.x + held.offset.x, y: finger.y + held.offset.y };
      options.onHandle(held.id, toPicture(stage.view(), to));
    } else if (two === undefined) {
      if (event.shiftKey) {
        stage.change((view, _, middle) => {
          const angle = (spot: Spot) => Math.atan2(spot.y - middle.y, spot.x - middle.x);
          return turned(view, middle, angle(finger) - angle(before));
        });
      } else {
        stage.change((view) => panned(view, { x: finger.x - before.x, y: finger.y - before.y }));
      }
    } else if (event.pointerId === one || event.pointerId === two) {
      const [a = before, b = before] = was;
      const [c = finger, d = finger] = now;
      stage.change((view, zoom) => pinched(view, [a, b], [c, d], zoom));
    }
  };

  const up = (event: On): void => {
    fingers.delete(event.pointerId);
    setGrip(undefined);
  };

  const wheel = (event: WheelEvent & { currentTarget: Element }): void => {
    event.preventDefault();
    const by = event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1);
    const at = spotOf(event);
    stage.change((view, zoom) => zoomed(view, at, Math.exp(-by * WHEEL), zoom));
  };

  const key = (event: KeyboardEvent): void => {
    const far = event.shiftKey ? 10 : 1;
    const arrows: Readonly<Record<string, Spot>> = {
      ArrowLeft: { x: -far, y: 0 },
      ArrowRight: { x: far, y: 0 },
      ArrowUp: { x: 0, y: -far },
      ArrowDown: { x: 0, y: far },
    };
    const by = arrows[event.key];
    if (by) options.onNudge(by);
    else if (event.key === '+' || event.key === '=') stage.change((v, zoom, at) => zoomed(v, at, 1.1, zoom));
    else if (event.key === '-') stage.change((v, zoom, at) => zoomed(v, at, 1 / 1.1, zoom));
    else if (event.key === '[') stage.change((v, _, at) => turned(v, at, -DEGREE));
    else if (event.key === ']') stage.change((v, _, at) => turned(v, at, DEGREE));
    else return;
    event.preventDefault();
  };

  return { grip, down, move, up, wheel, key };
}
