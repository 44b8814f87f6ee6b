/** Words of the room that measures the ridges of a wall in a picture. */
const en = {
  how: {
    title: 'How to take the photo',
    drawing:
      'A ridged wall seen edge on. A lamp close to the wall shines along it, so that each ridge throws a shadow. The phone looks square at the wall. A rule lies in the plane of the wall.',
    rule: 'rule, flat on the wall',
    lamp: 'lamp, low along the wall',
    square: 'square on',
    phone: 'phone',
    wall: 'wall',
    list: [
      'Light from the side, low along the wall and across the ridges, so that each one throws a shadow. No flash.',
      'The camera square to the wall, from twice the wall’s height or more, with some zoom rather than close up.',
      'A rule or a caliper’s open jaws in the picture as the scale, in the same plane as the wall: what lies nearer looks larger.',
      'At least five ridges in sight; ten give a good reading. Sharp, not shaken.',
      'A caliper always works too: measure from the crest of one ridge to the crest of another, N ridges on, and divide by N.',
    ],
  },
  looking: 'Look for the ridges',
  /** What the hand can move, by group. */
  hints: {
    picture:
      'One finger moves the picture, two turn and zoom it. With a mouse: drag, shift and drag to turn, the wheel to zoom. Turn it until the ridges lie level.',
    strip:
      'Drag the handles: ends 1 and 2 across the ridges, over as many as are clear; the strip as wide as the ridges run straight.',
    scale:
      'Drag the handles: A and B onto two marks of the rule, the edges of the jaws, or the first and the last of the layers.',
  },
  result: {
    interval: (ridges: string) => `From ridge to ridge, about 95 %. ${ridges} ridges in the strip.`,
    intervalTilted: (ridges: string, degrees: string) =>
      `From ridge to ridge, about 95 %. ${ridges} ridges in the strip, ${degrees}° off square to it (allowed for).`,
    /** What would lessen the doubt, where most of it comes from the picture. */
    fit: 'Most of the doubt comes from the picture: more ridges in the strip, a wider strip or flatter light lessens it.',
    caliper: 'A caliper always works too: from the crest of one ridge to that of another, N ridges on, divided by N.',
  },
  /** Why no period is given, and what would be accepted. */
  refusal: {
    'too short':
      'The strip is too short to hold a pattern. Draw its two ends further apart, across five ridges at least.',
    'too few ridges':
      'There are too few ridges in the strip to tell their spacing. Draw it longer, or take the photo from further away: five ridges at least, ten are good.',
    'nothing regular':
      'Nothing regular stands out from the surface’s own grain. Put the lamp lower and more to the side, so that each ridge throws a shadow; make the strip wider; see that it runs across the ridges.',
    'only layers':
      'Only the layers themselves show, no ridges beyond them. If there are ridges, a longer strip and light from the side bring them out; else this wall has none to be seen.',
    'no period':
      'The wall is wavy here, but without a period: no wave repeats from one end of the strip to the other. If ridges do show to the eye, lay a longer strip across more of them; else this wall has none.',
    round:
      'The ridges bow across the strip: the wall is round, and a scale beside it lies nearer or further than the ridges. Lay a narrower strip on the line nearest to the camera, or measure a flat wall; a caliper from crest to crest works too.',
    'too coarse':
      'The picture is too coarse: a ridge is only a few pixels wide. Go closer, or use the camera at its full resolution.',
    overexposed:
      'Much of the strip is pure white. Take the lamp further away or the exposure down, and shade it from the sky.',
    'too dark': 'The strip is too dark to read. More light from the side, and no shadow of the phone on the wall.',
    'layers unknown':
      'What repeats here may be the layers themselves. Type the layer height below the scale: then the layers’ own line is told from ridges.',
    angle:
      'The camera looks at the wall too much from one side for a length to be sure. Stand square to it, further away, and zoom in; the lamp is all right as it is.',
    'no scale':
      'The two scale marks lie on each other, or along the ridges where a length across is asked for. Set them further apart.',
  },

  periods: {
    axis: (unit: string) => `Strength of each period, ${unit}`,
    title: (lines: readonly { readonly name: string; readonly period: string }[], unit: string) =>
      lines.length > 0
        ? `Which periods are in it: ${lines.map(({ name, period }) => `${name} ${period} ${unit}`).join(', ')}`
        : 'Which periods are in it: none stands out',
    /** The lines of the spectrum by what they are; a harmonic by its share of the ridges' period. */
    lines: {
      ridges: 'ridges',
      layers: 'layers',
      other: 'other',
      half: 'half',
      third: 'third',
      quarter: 'quarter',
      fifth: 'fifth',
      sixth: 'sixth',
      part: 'part',
    },
  },
};
export default en;
