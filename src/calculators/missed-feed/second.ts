import type { SecondModel } from '../../engine/second';

const job = { h: '0.2 mm', h_1: '0.2 mm', t_L: '60 s', H_t: '100 mm', Z_s: '84 mm' };

/** Nothing of what is read here is set by a hand: a failed print goes on, is glued or is printed again. */
const model: SecondModel = {
  carry: () => ({}),
  contradictions: {
    stoppedAbove: { given: { ...job, Z_s: '120 mm', G: '4 mm' } },
    moreThanStopped: {
      given: { ...job, m_f: '180 g ± 1 g', m_t: '150 g ± 1 g', k_u: '1 ± 0' },
      choices: { by: 'fed' },
    },
    lostMoreThanAll: { given: { ...job, G: '90 mm ± 1 mm' } },
  },
};
export default model;
