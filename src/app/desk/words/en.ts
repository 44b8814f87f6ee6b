/** Words of what the rooms hand to one another. */
const days = (count: number) => (count === 1 ? 'every day' : `every ${count} days`);

const en = {
  promised: (name: string, expected: string, read: string, held: boolean) =>
    `${name}: expected ${expected}, read ${read}: ${held ? 'as predicted' : 'not as predicted'}.`,
  expects: (name: string, expected: string) => `${name} ${expected}`,
  copy: {
    coming: (have: number, of: number) => `Getting ready to work without a signal: ${have} of ${of} files.`,
    whole: (of: number) => `Ready to work without a signal: all ${of} files are on this device.`,
    failed: (have: number, of: number, file: string, why: string) =>
      `Not ready to work without a signal: ${have} of ${of} files are on this device. ${file}: ${why}.`,
    why: {
      unreachable: 'it could not be fetched',
      'not there': 'the host does not have it',
      'wrong type': 'something else came in its place, perhaps a sign-in page',
      'wrong content': 'it came damaged, or in another version',
      'no room': 'there is no room left on this device',
    },
    again: 'Try again',
  },
  machine: {
    label: 'Machine on the bench',
    none: 'None yet: checks work without, but nothing is remembered.',
    no: 'no machine',
    demo: (name: string) => `${name} (demo)`,
    make: 'New machine',
    name: 'Name of the machine',
    nameless: 'A machine needs a name you will know it by, such as “left bench” or its owner’s.',
    makeIt: 'Make it',
    cancel: 'Cancel',
    putDemo: 'Put a demo machine on the bench',
    looking: 'Looking it up…',
    gone: 'No such machine',
    mayBeRemoved: 'It may have been removed.',
    all: 'All machines',
  },
  photo: {
    title: 'Photo',
    ask: 'A photo of it (made smaller and kept on this device; where it was taken is left out)',
    alt: 'Kept with this reading',
    size: (width: number, height: number, kilobytes: number) => `${width} × ${height}, ${kilobytes} kB`,
    remove: 'Remove the photo',
    shrinking: 'Making it smaller…',
    noPicture: 'This browser cannot open that file as a picture. Take a photo in JPEG, or a screenshot of it.',
    notOpened: 'This browser cannot open it as a picture.',
    noShrinking: 'This browser cannot make the picture smaller.',
    tooLarge: 'The picture stays too large to keep, even made smaller.',
  },
  stop: {
    kicker: 'Stop. Before anything else',
    mains: 'What carries mains voltage stays shut: that is for a qualified person, and by the rules where you live.',
  },
  ways: {
    way: 'Way',
    standing: {
      advised: 'Advised.',
      'will do': 'Will do.',
      doubtful: 'Doubtful.',
      'falls short': 'Falls short.',
      'not possible': 'Not possible.',
    },
    takes: (needs: readonly string[]) => `Takes: ${needs.join('; ')}.`,
  },
  link: {
    label: 'Link',
    copy: 'Copy link',
    copied: 'The link is copied.',
    notCopied: 'This browser does not let the link be copied from here. Hold the line above and copy it by hand.',
    send: 'Send link',
    notSent: 'This phone did not take the link. Copy it instead.',
    show: 'Show as QR code',
    tooLong: 'This link is too long for a QR code. Copy it instead.',
    noDrawer: 'The part that draws the code is not on this device yet. Open Trammel once with a signal.',
    sheet: 'QR code of the link',
    code: 'The code',
    hold: 'Hold the other phone’s camera over it.',
    close: 'Close',
  },
  /** A value and the ends of the interval that it stands in. */
  leaning: (value: string, low: string, high: string) => `${value} (${low} to ${high})`,
  changed: {
    value: (name: string, was: string, now: string) => `${name}: ${was} then, ${now} now`,
    option: (name: string, was: string, now: string) => `${name}: “${was}” then, “${now}” now`,
  },
  /** Two texts for one field. */
  typed: {
    other: (words: string) => `Something else was typed here, in another tab or before: “${words}”`,
    take: 'Take that one',
    leave: 'Leave it',
  },
  /** Beside a time at which something was kept. */
  ahead: (time: string) => `${time} (after now: a clock was wrong)`,
  due: {
    ahead: (every: number) =>
      `The last reading is dated after now, so how old it is cannot be told; wanted ${days(every)}.`,
    never: (every: number) => `Not taken yet; wanted ${days(every)}.`,
    old: (age: number, every: number) =>
      `The last reading is ${age === 1 ? 'one day' : `${age} days`} old; wanted ${days(every)}.`,
    changed: (changes: readonly string[]) => `Changed since the last reading. ${changes.join('; ')}.`,
  },
  find: {
    /** Words that say nothing about what is wrong: a search leaves them out. */
    empty:
      'a an and are at but by did do does for from had has have how i if in is it its my of on or so some that the them then there these this to was what when where which why will with you',
  },
  /** What a machine's card keeps though no check draws from it. */
  places: {
    'belt.note-x': 'Belt note, X',
    'belt.note-y': 'Belt note, Y',
    'offset.bed': 'First layer set closer (−) or farther (+) by',
    'offset.probe-x': 'Probe from nozzle, to the right',
    'offset.probe-y': 'Probe from nozzle, to the back',
    'offset.probe-z': 'Probe switches above the nozzle by',
    'steps.feed': 'Steps per length, filament',
    'steps.x': 'Steps per length, X',
    'steps.y': 'Steps per length, Y',
    'steps.z': 'Steps per length, Z',
    'wheel.bush-turn': 'Eccentric bush, turned in from slack by',
  },
};
export default en;
