import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

const size = (seen: Seen | undefined): number => sizeSeen(seen) ?? NaN;

/** A stack of plastic on a bed, in the machine's coordinates: grown by warmth, topped by one layer, shrunk again, felt or measured. */
const model: SecondModel = {
  carry: ({ given, choices, movements, effect }) => {
    const [move] = movements;
    if (!move) return {};
    if (choices.plan === 'glue') {
      // A second stack is printed with another first layer; what is read of the first one stays.
      const way = move.direction === 'thicker' ? 1 : -1;
      return { h_1: size(given.h_1) + way * move.amount };
    }
    const warmer = choices.heat === 'cold' ? size(given.T_p) - size(given.T_m) : size(given.dT);
    const kelvin = choices.heat === 'warm' && choices.drift === 'warmer' ? -warmer : warmer;
    const grown = 1 + size(given.alpha) * kelvin;
    const foot = choices.zero === 'far' ? -size(given.s) : size(given.s);
    const felt = choices.plan === 'nozzle';
    const top = felt ? size(given.Z_r) - size(given.g_f) : size(given.H) + foot;
    const layer = size(given.h) + (move.direction === 'thinner' ? -move.amount : move.amount);
    const stands = (top * grown + layer) / grown;
    const read = felt ? { Z_r: stands + size(given.g_f) } : { H: stands - foot };
    return Object.keys(effect).length > 0 ? read : {};
  },
  contradictions: {
    lessThanFirst: { given: { Z_r: '0.12 mm', g_f: '0.1 mm', h: '0.1 mm', h_1: '0.3 mm' } },
    noRoomAbove: { given: { H: '80 mm', H_t: '79 mm', h: '0.2 mm', h_1: '0.3 mm' }, choices: { plan: 'glue' } },
  },
};
export default model;
