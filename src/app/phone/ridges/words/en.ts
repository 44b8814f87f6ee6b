/** Words of the room that measures the ridges of a wall in a picture. */
const en = {
  panel: {
    take: 'Take a picture',
    choose: 'Choose a picture',
    another: 'Choose another',
    notKept: 'The picture stays on this device and is not kept.',
  },
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

  /** What is happening, for the line above a progress bar. */
  part: {
    decoding: 'Opening the picture…',
    reading: 'Reading its grey values…',
    preview: 'Making the view for the screen…',
    sampling: 'Reading along the strip…',
    fitting: 'Looking for the ridges…',
  },
  cancel: 'Cancel',
  cancelled: {
    reading: 'Reading the picture was cancelled.',
    looking: 'Looking for the ridges was cancelled. The marks are as they were.',
  },
  /** Why a picture could not be used, and what would be accepted. */
  fault: {
    'no-background':
      'This browser cannot read pictures in the background. A newer one can; a caliper over several ridges works in any.',
    'not-a-picture': 'That file is no picture. A photo in JPEG, PNG or WebP is accepted.',
    'unknown-format':
      'That is a picture of a kind this browser cannot open. Set the camera to JPEG, or take a screenshot of the picture.',
    'too-large':
      'That picture is too large for this device, even made smaller. Take it at a lower resolution, or cut it down to the wall first.',
    failed: 'The picture could not be read: this device ran out of memory or the file is damaged. Choose it once more.',
  },

  marking: {
    move: 'Fingers and arrows move',
    arrows: 'The arrows move',
    picture: 'The picture with the strip and the scale marks',
    groups: { picture: 'the picture', strip: 'the strip', scale: 'the scale' },
    handles: {
      strip: 'all of it',
      'end 1': 'end 1',
      'end 2': 'end 2',
      width: 'its width',
      'mark A': 'mark A',
      'mark B': 'mark B',
    },
    hints: {
      picture:
        'One finger moves the picture, two turn and zoom it. With a mouse: drag, shift and drag to turn, the wheel to zoom. Turn it until the ridges lie level.',
      strip:
        'Drag the handles: ends 1 and 2 across the ridges, over as many as are clear; the strip as wide as the ridges run straight.',
      scale:
        'Drag the handles: A and B onto two marks of the rule, the edges of the jaws, or the first and the last of the layers.',
    },
    layStrip: 'Lay the strip down the middle of what is in view',
    bringMarks: 'Bring both marks into view',
    within: (pixels: number, closer: boolean) =>
      closer
        ? `Zoomed as now, a mark is set to within ± ${pixels} of the picture’s pixels; zoomed in, closer.`
        : `Zoomed as now, a mark is set to within ± ${pixels} of the picture’s pixels.`,
    reduced: 'The picture was too large for this device and is read at a lower resolution.',
  },

  scale: {
    between: 'Between the marks A and B lie',
    standards: {
      rule: { label: 'marks of a rule', field: 'Distance between the marks' },
      jaws: { label: 'caliper jaws', field: 'Opening of the jaws' },
      height: { label: 'a measured height', field: 'Height between the marks' },
      layers: { label: 'counted layers', field: 'Layers between the marks' },
    },
    example: (unit: string) => `in ${unit}, as 40 ± 0.1`,
    place: {
      title: 'It lies',
      ways: { flat: 'on the wall', before: 'before it' },
      before: 'Nearer to the camera than the wall by',
      away: 'From the lens to the wall',
      taken:
        'What lies nearer looks larger: 5 mm before the wall at 250 mm is 2 %. Without a ±, ± 0.5 mm and a tenth of the way are taken (common practice).',
    },
    whole: 'a whole number',
    layer: 'Layer height',
    layerToo: 'Layer height, to tell the layers from ridges (may stay empty where ridges are over 3.5 mm apart)',
    in: (unit: string) => `in ${unit}`,
    machines: (layer: string) => `${layer}, the machine’s`,
    /** What is taken for granted where no ± was typed. */
    taken: {
      rule: (half: string) =>
        `Without a ±, ± ${half} is taken (common practice); the places of your marks are counted apart from it.`,
      caliper: (half: string) =>
        `Without a ±, ± ${half} is taken (a caliper’s); the places of your marks are counted apart from it.`,
      layers: (percent: string) =>
        `Without a ±, the count is taken as right and the layer height as known to ± ${percent} % (common practice). One layer miscounted in fifty is 2 %: count twice.`,
    },
    /** Why what was typed is no distance, and what would be. */
    refusal: {
      nothing: 'A length greater than nothing is needed here.',
      tooLong: (most: string) => `That is more than ${most}. A length within the picture is meant.`,
      wideLength: 'The ± is as large as the length itself. A smaller one is needed.',
      noBefore: 'How far the scale stands before the wall is still to be said.',
      noAway: 'How far the camera was from the wall is still to be said.',
      nearer: 'The scale would stand nearer to the camera than to the wall. Check both lengths.',
      noLayer: 'The layer height is not known yet.',
      noneBetween: 'At least one layer must lie between the marks; twenty or more make a good scale.',
      wideCount: 'The ± is as large as the count itself. Count again.',
    },
  },

  looking: {
    key: 'Look for the ridges',
    /** What is still to be done before looking. */
    setMarks: 'Set both scale marks, A and B, on the rule or whatever serves as the scale.',
    sayDistance: 'Say what lies between the marks A and B.',
  },
  result: {
    title: 'What the picture says',
    stale: 'Something was changed since. Look for the ridges again.',
    interval: (ridges: string) => `From ridge to ridge, about 95 %. ${ridges} ridges in the strip.`,
    intervalTilted: (ridges: string, degrees: string) =>
      `From ridge to ridge, about 95 %. ${ridges} ridges in the strip, ${degrees}° off square to it (allowed for).`,
    /** Where the doubt comes from mostly, and what would lessen it. */
    advice: {
      marks:
        'Most of the doubt comes from the places of the scale marks: zoom in and set them again, further apart if you can, and have the rule close beside the strip.',
      distance:
        'Most of the doubt comes from the distance between the marks: a longer one, or one known better, lessens it.',
      fit: 'Most of the doubt comes from the picture: more ridges in the strip, a wider strip or flatter light lessens it.',
    },
    shares: (picture: string, marks: string, distance: string) =>
      `Standard uncertainties: picture ${picture}, marks ${marks}, distance ${distance}.`,
    percent: (share: string) => `${share} %`,
    under: (share: string) => `under ${share} %`,
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

  profile: {
    axis: (unit: string) => `Brightness along the strip, ${unit}`,
    title: 'Brightness along the strip',
    titleMarked: (ridges: number) => `Brightness along the strip, ${ridges} ridges marked`,
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
