/** Words of the components that know no subject. */
const en = {
  field: {
    less: (label: string) => `Less: ${label}`,
    more: (label: string) => `More: ${label}`,
    unit: (label: string) => `Unit: ${label}`,
    readWith: (label: string) => `Read with: ${label}`,
    changeSign: (label: string) => `Change sign: ${label}`,
    letters: 'Letters: for fractions, units and ±',
    lettersKey: '½ ± in',
    understood: 'Understood: 1/32 in, 3 1/2, 0.40 ± 0.02.',
  },
  table: {
    cell: (line: string, number: number, heading: string) => `${line} ${number}, ${heading}`,
    changeSign: (line: string, number: number) => `Change sign: ${line} ${number}`,
    takeOut: (line: string, number: number) => `Take out: ${line} ${number}`,
    keys: 'Keys',
    add: 'Add a line',
  },
  stopwatch: {
    title: 'Stopwatch',
    start: 'Start',
    now: 'Now',
    stop: 'Stop',
    empty: 'Take out the readings',
  },
  picture: {
    keys: 'Move, turn and zoom',
    left: 'To the left',
    up: 'Up',
    down: 'Down',
    right: 'To the right',
    whole: 'Whole',
    zoomOut: 'Zoom out',
    zoomIn: 'Zoom in',
    turnBack: 'Turn the picture 1° anticlockwise',
    turnOn: 'Turn the picture 1° clockwise',
    turnQuarter: 'Turn the picture 90° clockwise',
    hint: 'Arrow keys move what is picked below, ten times as far with shift; plus and minus zoom; square brackets turn by 1°.',
  },
  verdict: {
    within: 'Within limit',
    beyond: 'Beyond limit',
    'too close': 'Too close to call',
    none: 'No verdict yet',
  },
  trend: {
    marks: { within: 'within', 'too close': 'too close to call', beyond: 'beyond', none: 'reading' },
    allowed: 'allowed',
    bars: 'Bars: about 95 %.',
  },
  working: {
    formula: (meaning: string) => `Formula: ${meaning}`,
    share: (percent: number) => (percent === 0 ? '< 1 %' : `${percent} %`),
  },
};

export default en;
