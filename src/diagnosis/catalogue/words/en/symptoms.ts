import type { symptoms as listed } from '../../data';
import type { SymptomsWords } from '../../wording';

export const symptoms: SymptomsWords<typeof listed> = {
  'ridges-regular': {
    title: 'Ridges along Z at a regular spacing',
    complaint: 'The walls have rings all the way up, always the same distance apart.',
    sayings: ['banding', 'rings up the wall', 'wobble in the walls', 'waves at even distance', 'ribs on the sides'],
  },
  'ridges-irregular': {
    title: 'Ridges without a regular spacing',
    complaint: 'Some layers stick out, some sink in, with no pattern I can see.',
    sayings: ['rough walls', 'uneven layers', 'layers stick out here and there', 'random lines', 'wall looks rough'],
  },
  'first-layer-side': {
    title: 'One side of the first layer is thin',
    complaint: 'The first layer is squashed on one side and hardly sticks on the other.',
    sayings: [
      'one side high',
      'nozzle scrapes on the left',
      'not level',
      'gantry crooked',
      'first layer uneven',
      'one corner too low',
    ],
  },
  'layers-shifted': {
    title: 'Layers are shifted',
    complaint: 'Halfway up, everything is moved to one side, as if someone had pushed it.',
    sayings: [
      'layer shift',
      'stepped sideways',
      'print jumped to the side',
      'upper half offset',
      'staircase in the part',
    ],
  },
  hairs: {
    title: 'Fine hairs between parts',
    complaint: 'There are cobwebs between the pieces when I print several at once.',
    sayings: ['stringing', 'strings', 'cobwebs', 'oozing', 'whiskers', 'hairs'],
  },
  'slender-wobbles': {
    title: 'Slender parts wobble',
    complaint: 'Thin tall pieces come out wavy towards the top, thick ones are fine.',
    sayings: ['tall thin part wavy', 'pillar bends', 'top of the tower is bad', 'post is crooked', 'thin columns fail'],
  },
  'lets-go': {
    title: 'The part lets go of the bed',
    complaint: 'The corners come up, or the whole thing comes loose after an hour.',
    sayings: ['does not stick', 'corners lift', 'warping', 'comes off the bed', 'won’t adhere', 'curls up'],
  },
  'starved-band': {
    title: 'A band of starved layers',
    complaint: 'For a few millimetres the layers are thin and full of gaps, then it is fine again.',
    sayings: [
      'gap in the wall',
      'under-extruded band',
      'weak layers',
      'missing plastic',
      'spongy layers',
      'half jammed',
    ],
  },
  'corner-ripples': {
    title: 'Ripples after corners',
    complaint: 'After every corner there are faint echoes of the edge that fade away.',
    sayings: ['ringing', 'ghosting', 'echo of the edge', 'ripples', 'shadow lines by the corner'],
  },
  'oval-holes': {
    title: 'Round holes come out oval',
    complaint: 'The bearing does not fit: the hole is longer one way than the other.',
    sayings: [
      'circles not round',
      'oval',
      'holes too tight one way',
      'out of square',
      'egg-shaped',
      'dimensions differ in X and Y',
    ],
  },
  'screw-spins': {
    title: 'A screw turns without tightening',
    complaint: 'I can turn the screw for ever and it never gets tight.',
    sayings: ['stripped', 'screw won’t tighten', 'screw spins', 'thread gone', 'screw just turns', 'hole worn out'],
  },
  'gantry-sinks': {
    title: 'The gantry sinks when idle',
    complaint: 'Overnight the print head comes down by itself and touches the bed.',
    sayings: [
      'Z drops',
      'gantry falls down',
      'head comes down by itself',
      'one side sinks overnight',
      'axis slips when off',
    ],
  },
  'far-too-hot': {
    title: 'The hot end is far above its set point',
    complaint: 'It smokes and the plastic comes out like water, but the display says it is fine.',
    sayings: ['too hot', 'overheating', 'smokes', 'temperature runs away', 'hot end glows', 'keeps heating'],
  },
  'temperature-wanders': {
    title: 'The temperature wanders',
    complaint: 'The temperature goes up and down by ten degrees while it prints.',
    sayings: [
      'temperature jumps',
      'temperature swings',
      'heating fails now and then',
      'cannot hold temperature',
      'heater error',
    ],
  },
  'smell-or-warm-plug': {
    title: 'A smell of burning, or a warm plug',
    complaint: 'It smells scorched near the machine and one plug is warm.',
    sayings: ['burning smell', 'smells', 'connector melted', 'plug is brown', 'warm connector', 'scorched'],
  },
  'one-room': {
    title: 'It prints well in one room and not in another',
    complaint: 'In the workshop it was fine; since it stands in the cellar nothing sticks.',
    sayings: [
      'worked in the other room',
      'fails in winter',
      'only fails at night',
      'in the garage it does not stick',
      'depends on the weather',
    ],
  },
  'comes-and-goes': {
    title: 'A board or a sensor comes and goes',
    complaint: 'Sometimes it does not find its home, an hour later it works again.',
    sayings: [
      'intermittent',
      'works again after a knock',
      'resets itself',
      'screen goes blank',
      'sensor not found',
      'loose contact',
      'gives a shock',
      'tingles when touched',
      'breaker trips',
      'fuse blows',
    ],
  },
};
