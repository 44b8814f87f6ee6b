import { BELT_LABELS, beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  belts: choice(
    'The two belts',
    { same: { label: 'are of one sort and width' }, different: { label: 'differ in sort or width' } },
    'same',
  ),
  belt: choice(
    'Sort of belt',
    beltOptions({ pitch: 'p', height: 'h', mass: 'm_0', least: 'T_b', allowable: 'T_a' }),
    'curved2',
    { from: 'belt.type', hint: BELT_LABELS },
  ),
  belt_2: choice(
    'Sort of the second belt',
    beltOptions({ mass: 'm_02', least: 'T_b2', allowable: 'T_a2' }),
    'curved2',
    { from: 'belt.second-type', when: { belts: 'different' } },
  ),
  mass: choice(
    'Mass of the belts',
    {
      weigh: { label: 'weighed: a known length' },
      table: { label: 'from the table, by width' },
      typed: { label: 'known: per metre' },
    },
    'table',
    { hint: 'For two belts of one sort the difference does not hang on it, only the tension itself does.' },
  ),
  ends: choice(
    'Bending stiffness of the spans',
    {
      string: { label: 'left out: long, thin spans' },
      pinned: { label: 'counted, ends free to swing' },
      clamped: { label: 'counted, ends held: a clamp, or tight round a pulley' },
    },
    'string',
    { hint: 'For short spans, above all where one is much shorter than the other.' },
  ),
};
