import type { SecondModel } from '../../engine/second';

/** Nothing is set by this check's orders: a sensor is mended or replaced, and measured again. */
const second: SecondModel = {
  carry: () => ({}),
  contradictions: {
    tableRises: {
      given: { R_1: '10 kohm', R_2: '0.68 kohm', R_3: '0.7 kohm', R_m: '10 kohm', T_a: '24 °C' },
      choices: { law: 'three' },
    },
    boundsCross: { given: { R_m: '100 kohm', T_a: '24 °C', R_lo: '10 kohm', R_hi: '5 kohm' } },
  },
};
export default second;
