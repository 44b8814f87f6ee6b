/** Words of the room that measures the ripples beside an edge in a picture. */
const en = {
  how: {
    title: 'How to take the photo',
    drawing:
      'A wall seen square on, its corner at the left. Ripples beside the corner grow weaker to the right. A rule lies along them. A lamp stands beyond the corner.',
    corner: 'corner',
    lamp: 'lamp, low along the wall',
    rule: 'rule, flat on the wall',
    dies: 'they die away',
    list: [
      'Light low along the wall, across the ripples, so that each one shows as a stripe. No flash.',
      'The camera square to the wall, from twice its height or more, with some zoom. Sharp, not shaken.',
      'A rule or a caliper’s open jaws along the ripples, on the same wall: what lies nearer looks larger.',
      'Six ripples give a good reading; three are the least. A faster wall spreads them further apart.',
      'The first ripples beside the corner lie closer together while the nozzle still speeds up: leave them out.',
    ],
  },
  looking: 'Look for the ripples',
  /** What the hand can move, by group. */
  hints: {
    picture:
      'One finger moves the picture, two turn and zoom it. With a mouse: drag, shift and drag to turn, the wheel to zoom.',
    strip:
      'Drag the handles: end 1 just past the corner, end 2 where the ripples have died away. No letters or holes in the strip.',
    scale:
      'Drag the handles: A and B onto two marks of the rule or the edges of the jaws, one at each end of the ripples.',
  },
  speed: {
    label: 'Speed along that wall',
    in: (unit: string) => `in ${unit}`,
    machines: (speed: string) => `${speed}, the machine’s`,
    taken: (percent: string) =>
      `Without a ±, ± ${percent} % is taken (common practice). Of that very wall: outer walls are often set slower.`,
    nothing: 'A speed greater than nothing is needed here.',
    wide: 'The ± is as large as the speed itself. A smaller one is needed.',
  },
  result: {
    frequency: (frequency: string) => `It rings at ${frequency}: speed over spacing.`,
    noSpeed: 'Type the speed along that wall to see at which frequency it rings.',
    interval: (ripples: string) => `From ripple to ripple, about 95 %. ${ripples} ripples are to be seen.`,
    halving: (ripples: string) => `Half as high after ${ripples} ripples.`,
    noHalving: 'How fast they die away cannot be told here.',
    fit: 'Most of the doubt comes from the picture: more ripples in the strip, a wider strip or flatter light lessens it.',
    caliper: 'A caliper works too: over several ripples from crest to crest, divided by the spaces between them.',
  },
  /** Why no spacing is given, and what would be accepted. */
  refusal: {
    'too short': 'The strip is too short to hold ripples. Draw its two ends further apart.',
    'no ripples':
      'Nothing here looks like ripples that die away. Put the lamp lower and beyond the corner, lay the strip across them and clear of letters; if the wall is smooth, it does not ring.',
    'too few ripples':
      'Too few ripples stand out to tell their spacing: three at least, six are good. Use a faster wall, flatter light or a longer strip.',
    blurred:
      'The photo is out of focus or shaken: even the marks of the scale are smeared. Tap the wall to focus, hold still, and take it again.',
    angle:
      'The camera looks at the wall too much from one side for a length to be sure. Stand square to it, further away, and zoom in; the lamp is all right as it is.',
    overexposed: 'Much of the strip is pure white. Take the lamp further away or the exposure down.',
    'too dark': 'The strip is too dark to read. More light from the side, and no shadow of the phone on the wall.',
    'no scale': 'The two scale marks lie on each other. Set them further apart.',
  },
};
export default en;
