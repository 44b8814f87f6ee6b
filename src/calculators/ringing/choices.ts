import { BELT_LABELS, beltOptions } from '../../reference/belts';
import { choice } from '../../engine/calculator';

export const choices = {
  by: choice(
    'The ripples are',
    {
      count: { label: 'measured over several with a caliper' },
      direct: { label: 'a spacing: from a photo, or typed' },
    },
    'count',
  ),
  along: choice(
    'Spacing taken',
    { wall: { label: 'along the wall' }, axis: { label: 'along the axis, the wall at an angle to it' } },
    'wall',
  ),
  test: choice(
    'Printed at',
    { one: { label: 'one speed' }, two: { label: 'two speeds: tells swinging from a machine part' } },
    'one',
    { hint: 'What swings keeps its time, so its ripples spread with the speed. A tooth or a step keeps its place.' },
  ),
  corner: choice(
    'Round a corner the machine',
    { rest: { label: 'comes to rest, or it is not known' }, kept: { label: 'keeps a speed that is known' } },
    'rest',
    { hint: 'That speed drops at once, which rings by itself, whatever the acceleration.' },
  ),
  belt: choice('Sort of belt', beltOptions({ springRate: 'C_0' }), 'curved2', { from: 'belt.type', hint: BELT_LABELS }),
};
