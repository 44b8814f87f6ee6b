import { sizePiece } from './model';
import { combStl } from './piece';
import say from './words/en';

const { label, fillIn, file } = say.download;

const inMm = (x: number): string => String(Number((x * 1e3).toFixed(2)));

/** The test piece as a binary STL file in mm, sized from the values on the screen. */
function make(value: (symbol: string) => number | undefined) {
  const [d, w, h, x_b] = [value('d'), value('w'), value('h'), value('x_b')];
  if (d === undefined || w === undefined || h === undefined || x_b === undefined) return { reason: fillIn };
  return { name: file(inMm(d)), type: 'model/stl', bytes: combStl(sizePiece({ w, h, x_b })) };
}

export default { label, make };
