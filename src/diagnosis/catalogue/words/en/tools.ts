import type { Tool } from '../../make';

export const tools: Readonly<Record<Tool, string>> = {
  caliper: 'caliper',
  'feeler-gauge': 'feeler',
  'thread-gauge': 'thread gauge',
  'luggage-scale': 'luggage scale',
  rule: 'rule',
  'steel-rule': 'steel rule',
  'probe-thermometer': 'probe thermometer',
  'room-hygrometer': 'room hygrometer',
  multimeter: 'multimeter',
  'room-thermometer': 'room thermometer',
  stopwatch: 'stopwatch',
};
