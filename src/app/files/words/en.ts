/** Words of saving to files and reading files in. */
type Kind = keyof typeof kinds;

const kinds = {
  machine: ['machine', 'machines'],
  reading: ['reading', 'readings'],
  photo: ['photo', 'photos'],
  case: ['case', 'cases'],
  draft: ['half-typed check', 'half-typed checks'],
  typed: ['half-typed text', 'half-typed texts'],
} as const;

const counted = (kind: Kind, count: number) => `${count} ${count === 1 ? kinds[kind][0] : kinds[kind][1]}`;

const en = {
  title: 'Files',
  /** Ends what is under way. */
  stop: 'Stop',
  andMore: (count: number) => `And ${count} more.`,
  save: {
    title: 'Save to a file',
    what: 'What to save',
    scopes: { everything: 'everything, settings too', machines: 'machines and readings' },
    whatFor: 'What for',
    forms: { file: 'for Trammel, here or on another phone', csv: 'readings, for a spreadsheet' },
    make: 'Put the file together',
    making: 'Putting the file together…',
    stopped: 'Stopped. No file was put together.',
    withoutPhotos: 'Without photos',
    /** Stands in the name of a file. */
    machinesFile: 'machines',
    noReadings: 'There are no readings to save yet.',
    nothing: 'There is nothing to save yet.',
    tooMuch: (size: string, records: number) =>
      `This file would be too large to be read in again (${size}, ${records} records). Save each machine by itself, from its own page.`,
    tooMuchWithPhotos: (size: string, records: number) =>
      `This file would be too large to be read in again (${size}, ${records} records). Leave the photos out, or save each machine by itself, from its own page.`,
    bytes: (count: number) => `${count} bytes`,
    kilobytes: (count: number) => `${count} kB`,
    megabytes: (count: string) => `${count} MB`,
  },
  made: {
    counted,
    settings: 'the settings',
    contents: (size: string, parts: readonly string[]) => `${size}: ${parts.join(', ')}.`,
    missing: (count: number) =>
      count === 1
        ? 'One record could not be read and so is not in it; see Settings, “Set aside”.'
        : `${count} records could not be read and so are not in it; see Settings, “Set aside”.`,
    save: 'Save the file',
    share: 'Share it',
    notShared: 'This device would not share the file. Save it instead.',
  },
  reminder: {
    waiting: (count: number) =>
      count === 1
        ? 'One reading is saved in no file. A lost phone or a cleared browser would take it along.'
        : `${count} readings are saved in no file. A lost phone or a cleared browser would take them along.`,
    waitingAgain: (count: number) =>
      count === 1
        ? 'One reading is saved in no file yet. A lost phone or a cleared browser would take it along.'
        : `${count} readings are saved in no file yet. A lost phone or a cleared browser would take them along.`,
    save: 'Save to a file',
    later: 'Later',
  },
  takeIn: {
    title: 'Read a file in',
    choose: 'A file that Trammel saved',
    safe: 'Nothing is written before you have seen what it would change.',
    reading: 'Reading the file…',
    writing: 'Writing…',
    notOpened: 'This file could not be opened. It may have been moved; choose it again.',
    failed: (reason: string) => `Nothing was read in. ${reason}`,
    stopped: 'Stopped. Nothing was read in.',
    lookedAgain: 'Something was changed here meanwhile, so nothing was read in yet. This is how it stands now.',
    done: (added: number, changed: number) => `Read in: ${added} added, ${changed} changed.`,
  },
  plan: {
    label: 'What the file would do',
    summary: (made: string, parts: readonly string[]) => `made ${made}: ${parts.join(', ')}.`,
    added: (count: number) => `${count} to be added`,
    changed: (count: number) => `${count} to be changed`,
    left: (count: number) => `${count} left as here`,
    same: (count: number) => `${count} the same`,
    refusedCount: (count: number) => `${count} refused`,
    repeats: (count: number) =>
      count === 1
        ? '1 record stands in the file twice over and is taken once.'
        : `${count} records stand in the file twice over and are taken once.`,
    refused: 'Refused',
    refusal: (what: string, reason: string) => `${what}: ${reason}`,
    nothing: 'Reading it in would change nothing.',
    take: 'Read it in',
    leave: 'Leave it',
  },
  group: {
    none: 'No machine',
    machine: {
      added: (values: number) => `A new machine, with ${values} ${values === 1 ? 'value' : 'values'}.`,
      same: 'Its values are the same.',
      newer: 'The file has newer values.',
      older: 'What is here is newer.',
      conflict: 'It was changed both here and in the file.',
    },
    settings: 'The settings, as there are none here.',
    counts: (kind: Kind, count: number, parts: readonly string[]) => `${counted(kind, count)}: ${parts.join(', ')}.`,
    added: (count: number) => `${count} to be added`,
    same: (count: number) => `${count} the same`,
    differ: (count: number) => (count === 1 ? '1 differs' : `${count} differ`),
    namesake: 'Another machine here has this name; both would stand side by side.',
    where: 'Where they differ',
    choices: { newest: 'the newer of each', here: 'keep what is here', file: 'take the file’s' },
    hint: 'What only one side knows is kept either way, unless you keep what is here.',
    what: 'What',
    here: 'Here',
    inFile: 'In the file',
    stands: (side: string) => `✓ ${side}`,
    willStand: '(this will stand)',
  },
  difference: {
    /** Fields of records; others show their own word. */
    fields: {
      name: 'Name',
      note: 'Note',
      mark: 'Decimal mark',
      theme: 'Page',
      lengthUnit: 'Lengths in',
      forceUnit: 'Forces in',
      temperatureUnit: 'Temperatures in',
      order: 'Instruction',
      verdict: 'Verdict',
      limits: 'Limits',
      whole: 'With names and limits',
    },
    interval: (check: string) => `Days between checks, ${check}`,
    reading: (time: string, what: string) => `Reading of ${time}: ${what}`,
    photo: (what: string) => `Photo: ${what}`,
    picture: 'the picture',
    draft: (check: string, what: string) => `Half typed, ${check}: ${what}`,
    typed: (field: string) => `Half typed in a case: ${field}`,
    case: (time: string, what: string) => `Case opened ${time}: ${what}`,
    nothing: '–',
    valueAt: (value: string, time: string) => `${value}, ${time}`,
    inSi: (value: number) => `${value} (SI)`,
    set: 'set',
    yes: 'yes',
    no: 'no',
    otherPicture: 'another picture',
    inAll: (count: number) => `${count} in all`,
    empty: '(empty)',
    none: 'none',
  },
};
export default en;
