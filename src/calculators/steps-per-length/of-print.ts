import { expanded } from '../../formula/outcome';
import { telling, type Order, type Told } from '../../engine/order';
import type { Ask } from './asked';
import type words from './words/en';
import type { Scaling } from './words/en';

const { tell, step } = telling<typeof words>();

/** The scale that makes up for the piece’s proportional error, where there surely is one. */
function scaling(ask: Ask): Scaling {
  const axis = ask.choice('axis');
  const error = ask.known('c_t');
  if (!error || Math.abs(error.value) <= expanded(error)) return { axis, scale: undefined };
  return { axis, scale: { up: error.value < 0, to: ask.quantity('k_s') } };
}

/** The constant part: lines that stand out or fall short, the same on a small piece and a large one. */
function outline(ask: Ask): Told {
  const wall = ask.known('y');
  if (!wall || Math.abs(wall.value) <= expanded(wall)) return step('leaveOutline');
  return step('moveOutline', { by: ask.quantity('y'), out: wall.value > 0 });
}

/** What belongs to the drive, what to the line and what to the plastic. A piece never sets the machine: what it tells is of the drawing. */
export function ofPrint(ask: Ask): Order {
  const axis = ask.choice('axis');
  const larger = ask.number('e_d') > 0;
  const explained = step('explained', {
    piece: ask.quantity('c_t'),
    shrinkage: ask.quantity('s'),
    left: ask.quantity('e_d'),
  });
  if (ask.check('q') !== 'within') {
    const args = { set: ask.quantity('S_0'), parts: ask.quantity('S_c') };
    return tell('driveFirst', args, { steps: [explained, step('driveBeforePiece')], measureAgain: true });
  }
  const state = ask.check('e_d');
  if (state === 'within') {
    return tell('plasticShrank', scaling(ask), { steps: [explained, outline(ask), step('anotherPlastic')] });
  }
  if (state === 'beyond') {
    const steps = [explained, step('axisByItself'), step('scale', scaling(ask)), outline(ask)];
    return tell('untilMeasured', { axis, larger }, { steps, measureAgain: true });
  }
  const steps = [explained, step('ownTravel'), outline(ask)];
  return tell('pieceCannotTell', scaling(ask), { steps, measureAgain: true });
}
