import type { Size, Spot } from './view-transform';

/** Half of a handle, screen pixels: 48 px across. */
export const HANDLE_RADIUS = 24;
/** From the point to the middle of its handle: a thumb on the handle leaves the point in sight. */
export const HANDLE_REACH = 62;
/** A point this far outside the stage still has its handle. */
const SPARE = 4;

const fits = ({ x, y }: Spot, { width, height }: Size): boolean =>
  x >= HANDLE_RADIUS && y >= HANDLE_RADIUS && x <= width - HANDLE_RADIUS && y <= height - HANDLE_RADIUS;

/**
 * Where on the screen the handle of a point lies: beyond it as seen from `from`; where the stage ends there, to a side of
 * it, or before it.
 * @returns undefined where the point itself is out of view
 */
export function handleSpot(at: Spot, from: Spot, stage: Size): Spot | undefined {
  if (at.x < -SPARE || at.y < -SPARE || at.x > stage.width + SPARE || at.y > stage.height + SPARE) return undefined;
  const length = Math.hypot(at.x - from.x, at.y - from.y);
  const [x, y] = length > 1e-6 ? [(at.x - from.x) / length, (at.y - from.y) / length] : [0, -1];
  const ways: readonly Spot[] = [
    { x, y },
    { x: -y, y: x },
    { x: y, y: -x },
    { x: -x, y: -y },
  ];
  const spots = ways.map((way) => ({ x: at.x + HANDLE_REACH * way.x, y: at.y + HANDLE_REACH * way.y }));
  return spots.find((spot) => fits(spot, stage)) ?? spots[0];
}
