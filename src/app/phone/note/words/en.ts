/** Words of the room that listens to a belt. */
const en = {
  cautions: {
    label: 'Cautions',
    first: 'Before you touch it',
    list: [
      'Switch off and pull the plug: a motor that starts pulls the finger in and can crush it.',
      'Keep hands and sleeves off belts and pulleys that move. Hot end and bed burn until cold.',
    ],
  },
  how: {
    title: 'How to pluck',
    steps: [
      'Motors off and cold: a warm frame and a held motor pull on the belt.',
      'Choose a free span: from where the belt leaves one pulley or clamp to where it meets the next, touching nothing.',
      'Hold the carriage, or block it: if it gives, the note sinks while it rings.',
      'Hold the phone’s microphone one or two fingers from the middle of the span, without touching it.',
      'Pluck the flat of the belt at the middle of the span with a fingernail, gently, and let it ring out.',
      'Wait for silence and pluck again. When enough plucks agree, two high tones sound and listening ends.',
      'If a pluck does not appear in the list, press “Plucked now” just after the next one.',
    ],
    staysOn: 'The screen stays on while it listens.',
    mayGoOff: 'This browser does not let a page keep the screen on: touch it now and then.',
    notKept: 'The sound stays on this phone and is not kept.',
  },

  /** Where the microphone fails, the sheet does not. */
  typeInstead: 'A note found by other means can always be typed into the check.',
  /** What may come of what the phone does to the sound although asked not to. */
  meddled: 'A quiet belt may be cut short, and its note may be named wrong. Trust only plucks that agree.',

  reading: {
    label: 'Listening',
    off: 'Not listening.',
    offAt: (count: number, wanted: number) => `Not listening: ${count} of ${wanted}.`,
    opening: 'Asking for the microphone…',
    at: (count: number, wanted: number) => `${count} of ${wanted}`,
    first: 'Listening: pluck the middle of the span.',
    next: 'Let it ring out, then pluck again.',
    away: 'The page is out of sight: the microphone is off until you are back.',
    done: (count: number) => `Done: ${count} plucks agree.`,
    interval: (count: number) => `95 %, of ${count} plucks`,
    noneYet: 'No note yet: at least two plucks must agree, and more than half of those not struck off.',
    last: (pluck: number, note: string, fate: string) => `Pluck ${pluck}: ${note}, ${fate}.`,
  },
  /** Plucks that fall into two notes. */
  two: {
    title: (notes: readonly string[]) => `Two belts: first ${notes[0] ?? ''}, second ${notes[1] ?? ''}.`,
    what: 'Rest a hand on the one that is not meant, or keep one of them:',
    keep: ['Keep the first belt', 'Keep the second belt'],
    fate: ['first belt', 'second belt'],
  },
  /** Where a belt gives no note. */
  press: {
    sentence: 'A belt that is muffled, or a span that is very short, may give no note at all.',
    link: 'Press its middle instead: a scale and a rule',
  },
  keys: {
    wanted: 'Good plucks to wait for',
    listen: 'Listen',
    listenFor: (more: number) => `Listen for ${more} more`,
    again: 'Listen again',
    stop: 'Stop',
    plucked: 'Plucked now',
  },

  plucks: {
    title: 'Plucks',
    noNote: 'no note',
    strike: 'Strike off',
    strikeOne: (pluck: number) => `Strike off pluck ${pluck}`,
    takeBack: 'Take back',
    takeBackOne: (pluck: number) => `Take back pluck ${pluck}`,
  },
  /** Whether a pluck counts. */
  fate: {
    used: 'used',
    doubted: 'used, with twice the doubt: its partials alone would name another note',
    struck: 'struck off',
    waiting: 'waiting for others that agree',
    notUsed: (why: string) => `not used: ${why}`,
  },
  /** Why a pluck gave no note, in a word or two, and what to do about it. */
  refusal: {
    'too quiet': {
      short: 'too quiet',
      advice: 'Too quiet: bring the phone’s microphone nearer to the middle of the span, or pluck harder.',
    },
    'too noisy': {
      short: 'too noisy',
      advice: 'Too noisy to tell: switch off fans and motors, wait for silence, and bring the microphone nearer.',
    },
    'too short': {
      short: 'too short',
      advice: 'It died away too soon: take the finger right off, and let the belt ring out before the next pluck.',
    },
    'out of range': {
      short: 'out of range',
      advice: 'Its note is not one from 20 to 500 Hz: choose a span that is neither slack nor very short.',
    },
    contradicted: {
      short: 'two answers',
      heard: (partials: string, period: string) => `its partials say ${partials}, its period ${period}`,
      advice:
        'Two ways of naming it contradict each other: let the nail leave the belt at once, stay away from walls, and bring the microphone nearer.',
    },
    held: {
      short: 'a held tone, no pluck',
      advice: 'That tone did not die away as a belt does: switch off what hums or sings, and pluck again.',
    },
    muffled: {
      short: 'muffled',
      advice: 'It died away at once: take the finger right off, and see that nothing touches the span.',
    },
    overdriven: {
      short: 'too loud',
      advice: 'Too loud for the microphone: pluck more gently, or hold the phone a little further off.',
    },
  },
  /** Why a pluck stands apart from the others. */
  apart: {
    octaveAbove: 'an octave above the others',
    octaveBelow: 'an octave below the others',
    thrice: 'three times the others: an upper partial',
    third: 'a third of the others',
    moved: (percent: string, way: 'higher' | 'lower') =>
      `${percent} % ${way === 'higher' ? 'higher' : 'lower'}: the belt moved, or was plucked otherwise`,
    otherSpan: (percent: string, way: 'higher' | 'lower') =>
      `${percent} % ${way === 'higher' ? 'higher' : 'lower'}: another span`,
  },

  spectrum: {
    title: (pluck: number, note: string) => `Spectrum of pluck ${pluck}: ${note}`,
    caption: (pluck: number, decibels: string) =>
      `Pluck ${pluck}, ${decibels} dB over the noise. Solid: its note; broken: the partials above it, numbered.`,
    noNote: (pluck: number) => `Pluck ${pluck}: no note was found in it.`,
    loudness: 'Loudness against the strongest line, dB',
  },
};
export default en;
