import { BELT_LABELS, beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  by: choice(
    'Tension read by',
    { note: { label: 'the note of the plucked span' }, press: { label: 'pressing its middle: a scale and a rule' } },
    'note',
    { hint: 'The note disturbs the belt less; pressing needs no phone and no mass.' },
  ),
  which: choice(
    'Belt on this machine',
    { first: { label: 'the first (X, or A)' }, second: { label: 'the second (Y, or B)' } },
    'first',
  ),
  belt: choice(
    'Sort of belt',
    beltOptions({ height: 'h', mass: 'm_0', least: 'T_b', allowable: 'T_a', springRate: 'C_0' }),
    'curved2',
    { from: 'belt.type', hint: BELT_LABELS },
  ),
  mass: choice(
    'Mass of the belt',
    {
      weigh: { label: 'weighed: a known length of it' },
      table: { label: 'from the table, by width' },
      typed: { label: 'known: per metre' },
    },
    'table',
    { when: { by: 'note' }, hint: 'Tables differ by a sixth. Weighing two metres of it settles that.' },
  ),
  ends: choice(
    'Bending stiffness of the span',
    {
      string: { label: 'left out: a long, thin span' },
      pinned: { label: 'counted, ends free to swing' },
      clamped: { label: 'counted, ends held: a clamp, or tight round a pulley' },
    },
    'string',
    {
      when: { by: 'note' },
      hint: 'For short spans. A belt on pulleys lies between the two; held ends matter far more.',
    },
  ),
  adjuster: choice(
    'Tensioner',
    {
      clockwise: { label: 'a screw: clockwise tightens, seen from its head' },
      anticlockwise: { label: 'a screw: anticlockwise tightens, seen from its head' },
      slide: { label: 'no screw: motor or idler slides and is clamped' },
    },
    'clockwise',
    { from: 'belt.adjuster' },
  ),
};
