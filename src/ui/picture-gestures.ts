import { createSignal } from 'solid-js';
import { HANDLE_RADIUS } from './handle-place';
import type { Stage } from './picture-stage';
import { distance, panned, pinched, toPicture, turned, zoomed, type Spot } from './view-transform';

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
const KEY_ZOOM = 1.1;

type Touch = PointerEvent & { currentTarget: Element };

const spotOf = (event: MouseEvent & { currentTarget: Element }): Spot => {
  const { left, top } = event.currentTarget.getBoundingClientRect();
  const { clientLeft, clientTop } = event.currentTarget;
  return { x: event.clientX - left - clientLeft, y: event.clientY - top - clientTop };
};

/** What the gestures work on, read when a finger or key comes. */
interface Worked<Id extends string> {
  readonly stage: Stage;
  /** A handle was brought to a place in the picture. */
  readonly onHandle: (id: Id, to: Spot) => void;
  readonly onPick: (id: Id) => void;
  readonly onNudge: (by: Spot) => void;
}

/** The arrow keys, by their names: steps to the right and down. */
const ARROWS: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** The handle nearest to a finger, if it is under it. */
function handleUnder<Id extends string>(
  handles: readonly PlacedHandle<Id>[],
  finger: Spot,
): PlacedHandle<Id> | undefined {
  return handles
    .map((handle) => ({ handle, away: distance(handle.spot, finger) }))
    .filter(({ away }) => away <= HANDLE_RADIUS + MISS)
    .sort((a, b) => a.away - b.away)[0]?.handle;
}

/** What a key does to how the picture lies; undefined for a key that is no concern of it. */
const KEYS: Readonly<Record<string, Parameters<Stage['change']>[0] | undefined>> = {
  '+': (view, zoom, at) => zoomed(view, at, KEY_ZOOM, zoom),
  '=': (view, zoom, at) => zoomed(view, at, KEY_ZOOM, zoom),
  '-': (view, zoom, at) => zoomed(view, at, 1 / KEY_ZOOM, zoom),
  '[': (view, _, at) => turned(view, at, -DEGREE),
  ']': (view, _, at) => turned(view, at, DEGREE),
};

/**
 * Fingers, mouse and keys on a picture. One finger moves a handle, or the picture; two turn, zoom and move it. A mouse
 * turns it with the shift key held and zooms with its wheel. Long, because all of it shares the fingers and the grip.
 */
export function createGestures<Id extends string>(on: Worked<Id>, handles: () => readonly PlacedHandle<Id>[]) {
  const fingers = new Map<number, Spot>();
  const [grip, setGrip] = createSignal<Held<Id>>();

  const down = (event: Touch): void => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const finger = spotOf(event);
    fingers.set(event.pointerId, finger);
    setGrip(undefined);
    if (fingers.size > 1) return;
    const handle = handleUnder(handles(), finger);
    if (!handle) return;
    const { id, point } = handle;
    on.onPick(id);
    setGrip({ id, finger, offset: { x: point.x - finger.x, y: point.y - finger.y } });
  };

  const move = (event: Touch): void => {
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
      on.onHandle(held.id, toPicture(on.stage.view(), to));
    } else if (two === undefined) {
      if (event.shiftKey) {
        on.stage.change((view, _, middle) => {
          const angle = (spot: Spot) => Math.atan2(spot.y - middle.y, spot.x - middle.x);
          return turned(view, middle, angle(finger) - angle(before));
        });
      } else {
        on.stage.change((view) => panned(view, { x: finger.x - before.x, y: finger.y - before.y }));
      }
    } else if (event.pointerId === one || event.pointerId === two) {
      const [a = before, b = before] = was;
      const [c = finger, d = finger] = now;
      on.stage.change((view, zoom) => pinched(view, [a, b], [c, d], zoom));
    }
  };

  const up = (event: Touch): void => {
    fingers.delete(event.pointerId);
    setGrip(undefined);
  };

  const wheel = (event: WheelEvent & { currentTarget: Element }): void => {
    event.preventDefault();
    const by = event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1);
    const at = spotOf(event);
    on.stage.change((view, zoom) => zoomed(view, at, Math.exp(-by * WHEEL), zoom));
  };

  const key = (event: KeyboardEvent): void => {
    const far = event.shiftKey ? 10 : 1;
    const arrow = ARROWS[event.key];
    const how = KEYS[event.key];
    if (arrow) on.onNudge({ x: far * arrow.x, y: far * arrow.y });
    else if (how) on.stage.change(how);
    else return;
    event.preventDefault();
  };

  return { grip, down, move, up, wheel, key };
}
