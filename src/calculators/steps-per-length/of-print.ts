import { expanded } from '../../formula/outcome';
import { telling, type Movement, type Order, type Told } from '../../engine/order';
import type { Ask } from './asked';
import type words from './words/en';
import type { Scaling } from './words/en';

const { tell, step } = telling<typeof words>();

/** The scale that makes up for the piece’s proportional error, where there surely is one. */
function scale(ask: Ask): { readonly scaling: Scaling; readonly movements: readonly Movement[] } {
  const axis = ask.choice('axis');
  const error = ask.known('c_t');
  if (!error || Math.abs(error.value) <= expanded(error)) return { scaling: { axis, scale: undefined }, movements: [] };
  const amount = Math.abs(ask.number('k_s') - 1);
  const up = error.value < 0;
  return {
    scaling: { axis, scale: { up, to: ask.quantity('k_s') } },
    movements: [{ part: 'scale of the piece', direction: up ? 'up' : 'down', amount }],
  };
}

/** The constant part: lines that stand out or fall short, the same on a small piece and a large one. */
function outline(ask: Ask): { readonly told: Told; readonly movements: readonly Movement[] } {
  const wall = ask.known('y');
  if (!wall || Math.abs(wall.value) <= expanded(wall)) return { told: step('leaveOutline'), movements: [] };
  const out = wall.value > 0;
  return {
    told: step('moveOutline', { by: ask.quantity('y'), out }),
    movements: [{ part: 'outline', direction: out ? 'inwards' : 'outwards', amount: Math.abs(wall.value) }],
  };
}

/** What belongs to the drive, what to the line and what to the plastic. */
export function ofPrint(ask: Ask): Order {
  const axis = ask.choice('axis');
  const larger = ask.number('e_d') > 0;
  const { scaling, movements: scaled } = scale(ask);
  const { told, movements: outlined } = outline(ask);
  const movements = [...scaled, ...outlined];
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
    return tell('plasticShrank', scaling, { steps: [explained, told, step('anotherPlastic')], movements });
  }
  if (state === 'beyond') {
    const steps = [explained, step('axisByItself'), step('scale', scaling), told];
    return tell('untilMeasured', { axis, larger }, { steps, movements });
  }
  return tell('pieceCannotTell', scaling, { steps: [explained, step('ownTravel'), told], movements });
}
