import { expanded } from '../../formula/outcome';
import { SYMBOLS, type WayId } from './model';
import { classFor, largerName, rough, type Ask } from './judging';

/** A share as whole percent. */
const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** How tight, and how surely a wrench sets it. */
export function tighten(ctx: Ask, symbol: 'T_e' | (typeof SYMBOLS)[WayId]['torque']): string {
  const torque = ctx.known(symbol);
  const scatter = torque && torque.value > 0 ? percent(expanded(torque) / torque.value) : undefined;
  const pull =
    scatter === undefined
      ? ''
      : ` The pull that this makes is known to ${scatter} only: clean and dry threads, no jerk.`;
  return `Tighten to ${ctx.text(symbol)}, clockwise seen from the head.${pull}`;
}

const stop = (ctx: Ask): string =>
  ctx.choice('hole') === 'blind' ? ' Mark the depth on the drill with tape and go no deeper than the hole is.' : '';
const cut = 'half a turn on, a quarter back, and clear the chips often';

function insertSteps(ctx: Ask): readonly string[] {
  const size = ctx.choice('size');
  const taps = ctx.choice('hole') === 'blind' ? ', first the plug tap, then the bottoming tap' : '';
  return [
    `Drill ${ctx.text('D_d')}, square to the face.${stop(ctx)} The bore before the tap must be no less than ${ctx.text('D_m')}; where the kit names another drill, take the kit’s.`,
    `Tap with the tap for ${size} wire thread inserts (${ctx.text('D_i')} outside: no ordinary tap fits)${taps}: ${cut}.`,
    `Clean the thread. Wind the insert ${size} × ${ctx.text('L_i')} in with its tool, clockwise seen from above, until its end lies ¾ to 1½ turns below the face. Do not press.`,
    'Break the tang off with the punch in one blow, and take it out.',
    `Use a screw that reaches in by ${ctx.text('L_i')} at least. ${tighten(ctx, 'T_i')}`,
  ];
}

function nextSteps(ctx: Ask): readonly string[] {
  const larger = largerName(ctx);
  const grade = classFor(ctx);
  const screw = grade === undefined ? 'the strongest class there is' : `class ${grade} or better`;
  return [
    `Drill ${ctx.text('D_t')}, square to the face.${stop(ctx)}`,
    `Tap ${larger}: ${cut}. Traces of the old thread may stay at the wall; they do no harm.`,
    `Open the hole in the clamped part for ${larger} and look whether the larger head has room.`,
    `Use a screw ${larger}, ${screw}, that reaches in by ${rough(ctx, 'L_r')} at least. ${tighten(ctx, 'T_n')}`,
  ];
}

/** One way, step by step. */
export function stepsOf(ctx: Ask, id: WayId): readonly string[] {
  switch (id) {
    case 'longer':
      return [
        `Take a screw longer by ${rough(ctx, 'L_b')} at most: it must clamp before it meets the bottom of the hole.`,
        'Turn it in by hand first, by two turns past the stripped part; it must run without force. Clear the torn thread out first, with a scriber.',
        tighten(ctx, 'T_l'),
      ];
    case 'insert':
      return insertSteps(ctx);
    case 'next':
      return nextSteps(ctx);
    case 'bolt':
      return [
        `Drill the torn thread out to ${ctx.text('D_c')}, right through, with a block behind the part.`,
        `Bolt ${ctx.choice('size')} of class ${ctx.choice('grade')}, a washer under the head and one under the nut; two threads must stand out of the nut.`,
        `Hold the head, turn the nut. ${tighten(ctx, 'T_b')}`,
      ];
    case 'replace':
      return ['Put the new part in; start every screw by hand, two turns, before tightening any.', tighten(ctx, 'T_r')];
  }
}
