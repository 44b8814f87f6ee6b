import type { GreyPicture, Point } from './ridge-types';

/** Shares of the picture's longer side: how far about a place edges are looked for, and over how much each is looked at. */
const ABOUT = 0.03;
const NEAR = 0.003;
/** Share of the grey there that a sharp mark of a rule, or the edge of a jaw, steps by: black on white is nearly all of it. */
const LEAST_STEP = 0.25;

/** The largest step of grey over `apart` pixels, across or down, about a place, as a share of the mean grey there. */
function largestStep({ width, height, luminance }: GreyPicture, at: Point, about: number, apart: number): number {
  const [x0, x1] = [Math.max(0, Math.round(at.x) - about), Math.min(width - 1, Math.round(at.x) + about)];
  const [y0, y1] = [Math.max(0, Math.round(at.y) - about), Math.min(height - 1, Math.round(at.y) + about)];
  let [most, sum, count] = [0, 0, 0];
  for (let y = y0; y <= y1; y += 1) {
    for (let x = x0; x <= x1; x += 1) {
      const here = luminance[y * width + x] ?? 0;
      sum += here;
      count += 1;
      if (x + apart <= x1) most = Math.max(most, Math.abs((luminance[y * width + x + apart] ?? 0) - here));
      if (y + apart <= y1) most = Math.max(most, Math.abs((luminance[(y + apart) * width + x] ?? 0) - here));
    }
  }
  return sum > 0 ? (most * count) / sum : 0;
}

/**
 * Whether a picture is out of focus or shaken, by the marks that its scale was set on: none of them is sharp.
 * @param marks px: places of marks of a rule, or of a caliper's jaws
 */
export function isBlurred(picture: GreyPicture, marks: readonly Point[]): boolean {
  const side = Math.max(picture.width, picture.height);
  const px = (share: number) => Math.max(2, Math.round(share * side));
  return marks.every((at) => largestStep(picture, at, px(ABOUT), px(NEAR)) < LEAST_STEP);
}
