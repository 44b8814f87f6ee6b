const thing = (what: string) => ({
  shouldBeText: `${what} should be text`,
  tooLong: (max: number) => `${what} is longer than ${max} characters`,
  otherShape: `this is not ${what}`,
});

const kinds = {
  machine: 'machine',
  reading: 'reading',
  photo: 'photo',
  draft: 'draft',
  typed: 'typed text',
  case: 'case',
  settings: 'the settings',
};

/** Words of what a machine keeps: why a record or a file cannot be read or written, and the invented machine. */
const en = {
  /** What is wrong with one field; each stands after a colon. */
  field: {
    shouldBeText: 'this should be text',
    tooLong: (max: number) => `this text is longer than ${max} characters`,
    id: thing('an id'),
    place: thing('the name of a value'),
    symbol: thing('a symbol'),
    option: thing('an option'),
    time: { shouldBeText: 'a time should be text', otherShape: 'this is not a time' },
    photo: {
      shouldBeText: 'a photo should be text',
      tooLong: (max: number) => `this photo is longer than ${max} characters`,
      otherShape: 'this is not a photo',
    },
    reservedName: 'this name cannot be used',
    noName: 'a name is missing',
    shouldBeNumber: 'this should be a number',
    notFinite: 'this number is not finite',
    halfBelowZero: 'a half-width below zero',
    shouldBeMap: 'this should be a set of named values',
    tooManyValues: (max: number) => `more than ${max} values`,
    missing: 'a value is missing',
    shouldBeList: 'this should be a list',
    tooManyInList: (max: number) => `more than ${max} in a list`,
    tooManySteps: (max: number) => `more than ${max} steps`,
    shouldBeWhole: 'this should be a whole number',
    belowOne: 'this is below one',
    belowZero: 'this is below zero',
    above: (max: number) => `this is above ${max}`,
    shouldBeOneOf: (words: string) => `this should be one of: ${words}`,
    shouldBeYesOrNo: 'this should be yes or no',
    unknownVersion: 'the version is not a known one',
    upsideDown: 'the interval is upside down',
    noEntry: 'this is no entry of a case',
    notArgs: 'words cannot be made from this',
  },
  record: {
    notOurs: 'This is not a record of Trammel.',
    unknownKind: 'This record is of no kind that Trammel knows.',
    noVersion: 'This record does not say which version of Trammel wrote it.',
    newer: (written: number, newest: number) =>
      `This record was written by a newer Trammel (form ${written}; this one reads up to ${newest}).`,
    notBroughtUp: (written: number) => `This record (form ${written}) could not be brought up to date.`,
    unreadable: (problem: string) => `This record cannot be read: ${problem}.`,
    unreadableAt: (where: string, problem: string) => `This record cannot be read at “${where}”: ${problem}.`,
    elsewhere: 'This record stands where another belongs.',
  },
  store: {
    full: 'There is no room left to keep this. Save old readings to a file and delete them here, or free space on the phone.',
    heldUp: 'Storage does not answer; another tab may hold it. Close other tabs of Trammel, then reload.',
    missing: 'This browser keeps nothing here: a private window, or storage is switched off for this site.',
    failed: 'Storage failed. Reload; if it stays, save to a file.',
    failedWith: (error: string) => `Storage failed (${error}). Reload; if it stays, save to a file.`,
    cutShort: 'cut short',
    leftAlone: (reason: string) => `${reason} It was left as it is; nothing was changed.`,
    gone: 'Not saved: this machine is no longer there; it may have been removed in another tab. The reading still stands on the screen: choose or make a machine and save it again.',
    machineGone: 'Not saved: this machine is no longer there; it may have been removed in another tab.',
    notSaved: 'Not saved.',
    notSavedFor: (reason: string) => `Not saved. ${reason}`,
    notSavedElsewhere: 'Not saved. The record belongs elsewhere.',
  },
  file: {
    tooLarge: (megabytes: number) =>
      `This file is larger than ${megabytes} MB, more than is read here. Save fewer machines to each file.`,
    tooMany: (records: number) => `This file holds more than ${records} records, more than is read here.`,
    noVersion: 'This file does not say which version of Trammel wrote it.',
    newer: (written: number, newest: number) =>
      `This file was written by a newer Trammel (form ${written}; this one reads up to ${newest}). Open the newest Trammel, then read it again.`,
    empty: 'This file is empty.',
    damaged: 'This file is damaged or cut short, or it is not one that Trammel wrote.',
    notOurs: 'This is not a file that Trammel wrote.',
    unreadableAt: (where: string, problem: string) => `This file cannot be read at “${where}”: ${problem}.`,
    itsStart: 'its start',
    wrongList: 'It stands in the wrong list of the file.',
    atOdds: 'The file holds different records under this one id; which is right cannot be told, so none is taken.',
    keptUnreadable: 'What is kept here in its place cannot be read; it is left alone (see Settings).',
    tooMuchTogether: 'With what is kept here it would be more than one machine can hold.',
    noMachine: 'Its machine can be read neither in this file nor on this device.',
    noReading: 'The reading or case it belongs to is neither in this file nor on this device.',
    otherTime: 'A reading with this id and another time is kept here.',
  },
  /** Which record of a file is meant: by its place in the list, or by what is in it. `name` is empty for none. */
  which: {
    settings: kinds.settings,
    listed: (type: keyof typeof kinds, number: number, name: string) =>
      name === '' ? `${kinds[type]} ${number}` : `${kinds[type]} ${number}, “${name}”`,
    machine: (name: string) => `machine “${name}”`,
    reading: (calculator: string, time: string) => `reading of ${calculator}, ${time} UTC`,
    photo: (reading: string) => `photo to reading ${reading}`,
    draft: (calculator: string) => `entries for ${calculator}`,
    typed: (field: string) => `text typed for a case (${field})`,
    case: (day: string) => `case opened ${day}`,
  },
  csv: {
    columns: [
      ...['time', 'machine', 'machine id', 'reading id', 'check', 'verdict', 'instruction', 'note'],
      ...['result', 'symbol', 'value', 'low', 'high', 'unit', 'as shown'],
      ...['limit', 'limit least', 'limit most', 'limit verdict', 'kept by'],
      ...['expected after the order', 'expected low', 'expected high'],
    ],
    keptBy: { whole: 'this form', earlier: 'an earlier form: names and limits of today' },
    plainUnit: 'SI',
    notKept: 'not kept',
  },
  demo: {
    name: 'Bench printer, window side',
    note: 'Invented, to look around with. Town repair workshop: two screws joined by a belt; the right side stood high after a knock.',
    notes: {
      before: 'First layer thin on the right. A crate was put down on the gantry.',
      after: 'A week of printing since the belt was put back: it has held.',
    },
  },
};

export default en;
