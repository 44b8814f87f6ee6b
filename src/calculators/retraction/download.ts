import { testPiece } from './model';

const label = 'Save the test piece (STL)';

/** The test piece as a file, sized from the values on the screen. */
function make(value: (symbol: string) => number | undefined) {
  const [d, w, h, x_b] = [value('d'), value('w'), value('h'), value('x_b')];
  if (d === undefined || w === undefined || h === undefined || x_b === undefined) {
    return { reason: 'The size follows from nozzle, line, layer and bleeding time: fill those in first.' };
  }
  const { name, bytes } = testPiece({ d, w, h, x_b });
  return { name, type: 'model/stl', bytes };
}

export default { label, make };
