/** Words that all instruments of the phone's camera share: choosing a picture, laying strip and scale on it. */
const en = {
  panel: {
    take: 'Take a picture',
    choose: 'Choose a picture',
    another: 'Choose another',
    notKept: 'The picture stays on this device and is not kept.',
  },
  /** What is happening, for the line above a progress bar. */
  part: {
    decoding: 'Opening the picture…',
    reading: 'Reading its grey values…',
    preview: 'Making the view for the screen…',
    sampling: 'Reading along the strip…',
    fitting: 'Working it out…',
  },
  cancel: 'Cancel',
  cancelled: {
    reading: 'Reading the picture was cancelled.',
    looking: 'Looking was cancelled. The marks are as they were.',
  },
  /** Why a picture could not be used, and what would be accepted. */
  fault: {
    'no-background': 'This browser cannot read pictures in the background. A newer one can; a caliper works in any.',
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
  result: {
    title: 'What the picture says',
    stale: 'Something was changed since. Look again.',
    percent: (share: string) => `${share} %`,
    under: (share: string) => `under ${share} %`,
    shares: (picture: string, marks: string, distance: string) =>
      `Standard uncertainties: picture ${picture}, marks ${marks}, distance ${distance}.`,
    /** Where the doubt comes from mostly, and what would lessen it. */
    advice: {
      marks:
        'Most of the doubt comes from the places of the scale marks: zoom in and set them again, further apart if you can, and have the rule close beside the strip.',
      distance:
        'Most of the doubt comes from the distance between the marks: a longer one, or one known better, lessens it.',
    },
  },
  profile: {
    axis: (unit: string) => `Brightness along the strip, ${unit}`,
    title: 'Brightness along the strip',
    titleMarked: (crests: number) => `Brightness along the strip, ${crests} crests marked`,
  },
  /** What is still to be done before looking. */
  wanting: {
    setMarks: 'Set both scale marks, A and B, on the rule or whatever serves as the scale.',
    sayDistance: 'Say what lies between the marks A and B.',
  },
};
export default en;
