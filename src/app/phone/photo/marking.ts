import { createMemo, createSignal, untrack } from 'solid-js';
import type { OpenPicture } from '../../../instrument/picture';
import { createStage } from '../../../ui/picture-stage';
import { panned, toPicture, toScreen, type Spot } from '../../../ui/view-transform';
import { handlePlace, marksInView, moveHandle, pointingAt, stripInView, type HandleId, type Marks } from './marks';

/** What fingers and arrows can be set to move, and by which handles. */
export const GROUPS = {
  picture: [],
  strip: ['strip', 'end 1', 'end 2', 'width'],
  scale: ['mark A', 'mark B'],
} as const satisfies Record<string, readonly HandleId[]>;
export type Group = keyof typeof GROUPS;

const SIGNS: Readonly<Record<HandleId, string>> = {
  strip: '✥',
  'end 1': '1',
  'end 2': '2',
  width: '↔',
  'mark A': 'A',
  'mark B': 'B',
};

/** The picture moves further at a tap than a mark does. */
const PICTURE_STEP = 12;

/** Strip and scale marks set by hand on an open picture. */
export function createMarking(picture: OpenPicture) {
  const stage = createStage({ width: picture.width, height: picture.height });
  const [moved, setMoved] = createSignal<Marks>();
  const [group, setGroup] = createSignal<Group>('picture');
  const [picked, setPicked] = createSignal<HandleId>();

  /** Where they lay at first: on what was in view when the stage got its size. */
  const laid = createMemo<Marks | undefined>((before) => {
    const size = stage.size();
    return before ?? (size && marksInView(untrack(stage.view), size, stage.picture));
  });
  const marks = () => moved() ?? laid();
  const change = (how: (now: Marks) => Marks): void => {
    const now = marks();
    if (now) setMoved(how(now));
  };
  const pointing = () => pointingAt(stage.view(), picture.previewScale);
  const bring = (id: HandleId, to: Spot): void => change((now) => moveHandle(now, id, to, stage.picture, pointing()));

  return {
    stage,
    marks,
    group,
    picked,
    setPicked,
    /** How closely a mark is set at this zoom, ± picture pixels. */
    pointing,
    handles: () => {
      const now = marks();
      return now ? GROUPS[group()].map((id) => ({ id, sign: SIGNS[id], ...handlePlace(now, id) })) : [];
    },
    bring,
    nudge(by: Spot): void {
      const id = picked();
      const now = marks();
      if (!id || !now) {
        stage.change((view) => panned(view, { x: by.x * PICTURE_STEP, y: by.y * PICTURE_STEP }));
        return;
      }
      const point = toScreen(stage.view(), handlePlace(now, id).at);
      bring(id, toPicture(stage.view(), { x: point.x + by.x, y: point.y + by.y }));
    },
    pickGroup(next: Group): void {
      setGroup(next);
      setPicked(GROUPS[next][0]);
    },
    /** Lays the strip, or both scale marks, on what is in view. */
    layHere(what: 'strip' | 'scale'): void {
      const size = stage.size();
      if (!size) return;
      const [view, whole] = [stage.view(), stage.picture];
      change((now) =>
        what === 'strip'
          ? { ...now, strip: stripInView(view, size, whole) }
          : { ...now, scale: marksInView(view, size, whole).scale },
      );
    },
  };
}

export type Marking = ReturnType<typeof createMarking>;
