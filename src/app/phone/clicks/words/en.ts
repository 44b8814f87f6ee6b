/** Words of the room that counts a feeder’s ticks. */
const en = {
  cautions: {
    label: 'Cautions',
    first: 'Before it feeds',
    list: [
      'The hot end burns, and melt may spit from a blocked nozzle: goggles, and no hand or face below it.',
      'Keep fingers, hair and sleeves off the feed gear and all that moves: it pulls in and crushes.',
    ],
  },
  how: {
    title: 'How to count',
    steps: [
      'Heat to printing temperature. Stop fans you can do without; be silent.',
      'Hold the phone’s microphone a hand’s width from the feeder’s motor, away from the hot end and from fans.',
      'Press “Listen”, wait a second, then feed: 100 mm, at the speed you print with.',
      'When it has stopped, wait a second and press “Stop”.',
    ],
    notKept: 'The sound stays on this phone and is not kept.',
  },
  typeInstead: 'Ticks counted by your own ear can always be typed into the check.',
  meddled: 'Short sounds may be swallowed, and ticks missed.',
  reading: {
    label: 'Counting',
    off: 'Not listening.',
    opening: 'Asking for the microphone…',
    listening: 'Listening: feed now.',
    away: 'The page is out of sight: the microphone is off until you are back.',
    count: (ticks: number, doubt: number) =>
      `${ticks}${doubt > 0 ? ` ± ${doubt}` : ''} ${ticks === 1 && doubt === 0 ? 'tick' : 'ticks'}`,
    over: (seconds: string) => `95 %, in ${seconds} s`,
    rate: (ticks: string) => `${ticks} a minute.`,
    faint: 'Many ticks are hardly louder than the room, so some may be missed: bring the microphone nearer.',
    masked: 'Other sounds may have hidden ticks: be silent, stop fans, and count again.',
  },
  strip: { label: 'Every tick over time, as high as it is loud; those in doubt are broken lines' },
  keys: { listen: 'Listen', again: 'Count again', stop: 'Stop' },
};
export default en;
