import { createSignal } from 'solid-js';
import { held, panned, wholeView, zoomOf, type Size, type Spot, type View, type Zoom } from './view-transform';

/** The stage a picture lies on: its size on the screen and how the picture lies in it. */
export function createStage(picture: Size) {
  const [size, setSize] = createSignal<Size>();
  const [view, setView] = createSignal<View>({ re: 1, im: 0, x: 0, y: 0 });

  const middle = (): Spot => ({ x: (size()?.width ?? 0) / 2, y: (size()?.height ?? 0) / 2 });

  /** To be told the size whenever it changes: what was in the middle stays there. */
  const resize = (next: Size): void => {
    const before = size();
    if (next.width < 1 || next.height < 1 || (before?.width === next.width && before.height === next.height)) return;
    setView((old) =>
      before
        ? panned(old, { x: (next.width - before.width) / 2, y: (next.height - before.height) / 2 })
        : wholeView(picture, next),
    );
    setSize(next);
  };

  /** Changes how the picture lies; it cannot be lost out of sight. */
  const change = (how: (view: View, zoom: Zoom, middle: Spot) => View): void => {
    const stage = size();
    if (stage) setView((old) => held(how(old, zoomOf(picture, stage), middle()), picture, stage));
  };

  const whole = (): void => {
    const stage = size();
    if (stage) setView(wholeView(picture, stage));
  };

  return { picture, size, view, resize, change, whole };
}

export type Stage = ReturnType<typeof createStage>;
