import { choice } from '../../engine/calculator';

export const choices = {
  what: choice({ sensor: {}, heater: {} }, 'sensor'),
  by: choice({ ohms: {}, shown: {} }, 'ohms', {
    when: { what: 'sensor' },
  }),
  law: choice({ beta: {}, three: {} }, 'beta', { from: 'sensor.law', when: { what: 'sensor' } }),
};
