/** Words of the phone's instruments as a whole: their list, one over a check, one by itself. */
const en = {
  instruments: {
    note: {
      title: 'Note of a belt',
      question: 'Which note does a plucked belt give?',
      /** What a person would say, for the search. */
      sayings: ['belt too loose', 'belt too tight', 'pluck the belt', 'listen to the belt', 'microphone'],
      /** On the key beside a line that it can fill. */
      key: 'Listen with the phone',
    },
    clicks: {
      title: 'Ticks of a feeder',
      question: 'How many times does the feeder tick while it feeds?',
      sayings: ['feeder ticks', 'clicking', 'feeder clicks', 'knocks while it feeds', 'count ticks', 'microphone'],
      key: 'Count with the phone',
    },
    ridges: {
      title: 'Ridges in a photo',
      question: 'How far apart are the ridges of a wall?',
      sayings: ['ridges up the wall', 'banding', 'lines in a photo', 'camera', 'picture of a wall'],
      key: 'Measure in a photo',
    },
    ripples: {
      title: 'Ripples in a photo',
      question: 'At which frequency does the machine ring?',
      sayings: ['ringing in a photo', 'ghosting', 'ripples beside a corner', 'camera', 'vibration frequency'],
      key: 'Measure in a photo',
    },
    skew: {
      title: 'Square in a photo',
      question: 'How far is a printed square from square?',
      sayings: ['skew in a photo', 'part on paper', 'camera', 'parallelogram', 'not square'],
      key: 'Measure in two photos',
    },
    slope: {
      title: 'Level',
      question: 'How far is it from level?',
      sayings: ['spirit level', 'gantry slopes', 'table not level', 'leaning'],
      key: 'Lay the phone on it',
    },
  },
  instrument: 'the instrument',
  dialog: { back: 'Back to the check' },
  screen: {
    unknown: 'No such instrument',
    all: 'All checks',
    take: 'Use in a check',
    into: 'Use it in',
  },
};
export default en;
