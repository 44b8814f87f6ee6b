import { choice } from '../../engine/calculator';

export const choices = {
  what: choice('What to check', { sensor: { label: 'temperature sensor' }, heater: { label: 'heater' } }, 'sensor'),
  by: choice(
    'Sensor read',
    { ohms: { label: 'with an ohmmeter, unplugged' }, shown: { label: 'on the machine’s screen' } },
    'ohms',
    {
      hint: 'The meter tests the sensor; the screen tests sensor, wires, board and settings at once.',
      when: { what: 'sensor' },
    },
  ),
  law: choice(
    'Sensor known by',
    { beta: { label: 'its B value' }, three: { label: 'three lines of its table' } },
    'beta',
    { from: 'sensor.law', when: { what: 'sensor' } },
  ),
};
