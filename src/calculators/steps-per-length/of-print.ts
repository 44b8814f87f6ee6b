import { expanded } from '../../formula/outcome';
import type { Instruction, Movement } from '../../engine/calculator';
import { AXES, stepsText, type Ask } from './asked';

interface Done {
  readonly said: string;
  readonly movement?: Movement;
}

/** The scale that makes up for the piece’s proportional error, where there surely is one. */
function scale(ctx: Ask): Done {
  const error = ctx.known('c_t');
  if (!error || Math.abs(error.value) <= expanded(error)) {
    return { said: 'Leave the scale: these sizes cannot tell it from 100 %.' };
  }
  const amount = Math.abs(ctx.number('k_s') - 1);
  const direction = error.value < 0 ? 'up' : 'down';
  return {
    said: `Scale pieces of this plastic ${direction} to ${ctx.text('k_s')} along ${AXES[ctx.choice('axis')]}.`,
    movement: { part: 'scale of the piece', direction, amount },
  };
}

/** The constant part: lines that stand out or fall short, the same on a small piece and a large one. */
function outline(ctx: Ask): Done {
  const wall = ctx.known('y');
  if (!wall || Math.abs(wall.value) <= expanded(wall)) {
    return { said: 'Leave the outline: these sizes show no wall that stands out or falls short.' };
  }
  const out = wall.value > 0;
  const by = ctx.text('y', { magnitude: true });
  return {
    said: `Every wall stands ${by} ${out ? 'out' : 'back'}, on a small piece as on a large one, and holes are ${out ? 'narrower' : 'wider'} by twice that: draw the outline ${by} ${out ? 'inwards' : 'outwards'}, or set the line width and the flow right. No steps and no scale mend that.`,
    movement: { part: 'outline', direction: out ? 'inwards' : 'outwards', amount: Math.abs(wall.value) },
  };
}

/** What belongs to the drive, what to the line and what to the plastic. */
export function ofPrint(ctx: Ask): Instruction {
  const name = AXES[ctx.choice('axis')];
  const left = ctx.number('e_d');
  const done = [scale(ctx), outline(ctx)];
  const movements = done.flatMap((one) => (one.movement ? [one.movement] : []));
  const said = done.map((one) => one.said);
  const why = `Of the ${ctx.text('c_t')} of the piece, shrinkage explains −${ctx.text('s')}; ${ctx.text('e_d')} is left.`;
  if (ctx.check('q') !== 'within') {
    return {
      headline: `Leave the piece for now: ${stepsText(ctx, 'S_0')} is set and the parts make ${stepsText(ctx, 'S_c')}. Measure the drive’s own travel first.`,
      steps: [why, 'Choose “the drive’s own travel” above. Scale and outline come after the drive is right.'],
      measureAgain: true,
    };
  }
  const state = ctx.check('e_d');
  if (state === 'within') {
    return {
      headline: `Leave the steps of ${name}: the plastic shrank as it must. ${said[0] ?? ''}`,
      steps: [
        why,
        ...said.slice(1),
        'A belt’s pitch does not change with the plastic: another one gets another scale.',
      ],
      movements,
    };
  }
  if (state === 'beyond') {
    return {
      headline: `Leave the steps of ${name} until its own travel is measured: ${left > 0 ? 'the piece is larger' : 'the piece is smaller'} than shrinkage explains.`,
      steps: [
        why,
        'Measure how far the axis moves by itself (choose it above), over the longest length there is. If that agrees with the parts, the rest is the plastic’s too: enter its shrinkage.',
        ...said,
      ],
      movements,
    };
  }
  return {
    headline: `Leave the steps of ${name}: a printed piece cannot tell a drive that well. ${said[0] ?? ''}`,
    steps: [
      why,
      'To know about the drive, measure its own travel (choose it above): no shrinkage comes in.',
      ...said.slice(1),
    ],
    movements,
  };
}
