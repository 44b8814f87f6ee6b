import { choice } from '../../engine/calculator';

export const choices = {
  what: choice({ sensor: {}, heater: {} }, 'sensor'),
  law: choice(
    {
      beta: {},
      three: {},
      // Half and twice what platinum has anywhere between −20 and 200 °C.
      pt100: { set: { R_0: [100, 0.12], R_lo: 0.05, R_hi: 0.36 } },
      pt1000: { set: { R_0: [1000, 1.2], R_lo: 0.5, R_hi: 3.6 } },
    },
    'beta',
    { from: 'sensor.law', when: { what: 'sensor' } },
  ),
  by: choice({ ohms: {}, shown: {} }, 'ohms', {
    when: { what: 'sensor' },
  }),
};
