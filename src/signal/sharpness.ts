import type { GreyPicture, Point } from './ridge-types';

/** Shares of the picture's longer side: how far about a place edges are looked for, and over how much each is looked at. */
const ABOUT = 0.03;
const NEAR = 0.003;
const FAR = 0.02;
/** Grey values that an edge has at least, and the share of its step that a sharp one makes nearby. */
const LEAST_STEP = 12;
const LEAST_SHARE = 0.4;

/** The largest step of grey over `apart` pixels, across and down, about a place. */
function largestStep({ width, height, luminance }: GreyPicture, at: Point, about: number, apart: number): number {
  const [x0, x1] = [Math.max(0, Math.round(at.x) - about), Math.min(width - 1, Math.round(at.x) + about)];
  const [y0, y1] = [Math.max(0, Math.round(at.y) - about), Math.min(height - 1, Math.round(at.y) + about)];
  let most = 0;
  for (let y = y0; y <= y1; y += 1) {
    for (let x = x0; x <= x1; x += 1) {
      const here = luminance[y * width + x] ?? 0;
      if (x + apart <= x1) most = Math.max(most, Math.abs((luminance[y * width + x + apart] ?? 0) - here));
      if (y + apart <= y1) most = Math.max(most, Math.abs((luminance[(y + apart) * width + x] ?? 0) - here));
    }
  }
  return most;
}

/**
 * Whether a picture is out of focus or shaken, by the edges near some places that have some: marks of a rule, jaws.
 * @param places px; where no edge stands near any of them nothing is said
 */
export function isBlurred(picture: GreyPicture, places: readonly Point[]): boolean {
  const side = Math.max(picture.width, picture.height);
  const px = (share: number) => Math.max(2, Math.round(share * side));
  const shares = places.flatMap((at) => {
    const far = largestStep(picture, at, px(ABOUT), px(FAR));
    return far < LEAST_STEP ? [] : [largestStep(picture, at, px(ABOUT), px(NEAR)) / far];
  });
  return shares.length > 0 && shares.every((share) => share < LEAST_SHARE);
}
