import { firstThat, settable } from '../../engine/settable';
import { massOf, STEPS, type Ask, type Lever } from './asked';

/** What each input is to read. */
export type Changes = Readonly<Partial<Record<Lever, number>>>;
type Limit = 'q' | 'q_e' | 'F_t';

const passes = (ask: Ask, changes: Changes, of?: Limit): boolean => ask.after(changes, of) === 'within';

/** Brings one input towards the guide, from a first guess on, until the limit holds surely; to the guide itself where none does. */
function nearer(ask: Ask, made: Changes, lever: 'd_0' | 'e' | 'e_l', of: Limit | undefined, guess: number): Changes {
  const step = STEPS[lever];
  const holds = (si: number): boolean => passes(ask, { ...made, [lever]: si }, of);
  return { ...made, [lever]: firstThat(holds, settable(guess, step, 'down'), 0, step) ?? 0 };
}

/** Share that the limit leaves of a share surely eaten: what the offset has to be multiplied by. */
function room(ask: Ask, of: 'q' | 'q_e'): number {
  const found = ask.known(of);
  const most = Math.max(Math.abs(found?.low ?? 1), Math.abs(found?.high ?? 1));
  return Math.min(1, ask.number('q_lim') / most);
}

/** The push: the drive's point nearer to the guide, or the shares of two drives so that they cancel. */
function forPush(ask: Ask): Changes {
  if (passes(ask, {}, 'q')) return {};
  if (ask.choice('drive') === 'both') return { s: settable(ask.number('s_0'), STEPS.s, 'nearest') };
  return nearer(ask, {}, 'd_0', 'q', ask.number('d_0') * room(ask, 'q'));
}

/** The weight: its centre nearer to the guide. */
function forWeight(ask: Ask, made: Changes): Changes {
  if (ask.choice('way') === 'level' || passes(ask, made, 'q_e')) return made;
  return nearer(ask, made, massOf(ask), 'q_e', ask.number(massOf(ask)) * room(ask, 'q_e'));
}

/** The force: what the frame clamps, then the acceleration, then the drive's point, each alone; then all that help. */
function forForce(ask: Ask, made: Changes): Changes {
  if (passes(ask, made, 'F_t')) return made;
  const square: Changes = (ask.known('N_c')?.value ?? 0) > 0 ? { ...made, dx: 0 } : made;
  if (square.dx !== undefined && passes(ask, square, 'F_t')) return square;
  const lack = ask.number('R') - ask.number('F_t');
  const guess = Math.max(0, ask.number('a') - Math.max(0, lack) / ask.number('M'));
  const slower = (si: number): boolean => passes(ask, { ...square, a: si }, 'F_t');
  const a = firstThat(slower, settable(guess, STEPS.a, 'down'), 0, STEPS.a);
  if (a !== undefined) return { ...square, a };
  if (ask.choice('drive') === 'both') return square;
  const close = nearer(ask, square, 'd_0', 'F_t', square.d_0 ?? ask.number('d_0'));
  return passes(ask, close, 'F_t') ? close : square;
}

/** What to change so that the carriage runs, as far as changing helps. */
export const planOf = (ask: Ask): Changes => forForce(ask, forWeight(ask, forPush(ask)));
