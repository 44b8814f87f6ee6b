/** Words of the frame around every screen and of the first one; of the page and of its entry among the device's apps. */
const en = {
  page: {
    description: 'Find, measure and prove what ails a filament printer, at the bench, offline.',
    noScript: 'Trammel works on this device alone and needs JavaScript switched on.',
  },
  head: {
    /** The letters before the last, which is drawn. */
    stem: 'Tramme',
    home: 'Trammel: all checks',
    main: 'Main',
    machines: 'Machines',
    settings: 'Settings',
    sunlight: 'For sunlight: black on white, thicker lines',
  },
  update: {
    ready: 'A new version is ready. What you have typed is kept.',
    now: 'Change over now',
    later: 'Later',
  },
  unknown: {
    title: 'Nothing at this address',
    why: 'The link may be cut short, or meant for another version. Nothing that you kept was touched.',
    all: 'All checks',
  },
  licences: {
    title: 'Licences',
    why: 'Trammel is free to use, change and pass on. It is built from the packages below; each stays under its own licence.',
  },
  /** Called so while they are fetched, and where that fails. */
  parts: {
    home: 'the list of checks',
    check: 'the check',
    machines: 'the machines',
    machine: 'the machine',
    card: 'the card',
    trend: 'the trend',
    reading: 'the reading',
    phone: 'the instrument',
    newCase: 'the page for a new case',
    stop: 'the page with what to do first',
    arrival: 'the page for a case that was sent',
    case: 'the case',
    caseSheet: 'the case report',
    settings: 'the settings',
    licences: 'the licences',
    news: 'what is new',
    cases: 'the list of cases',
    search: 'the search',
    firstActs: 'what to do first: switch off and unplug',
    screen: 'this screen',
    some: 'a part of the app',
  },
  trouble: { understood: 'Understood' },
  undo: { putBack: 'Put it back', leave: 'Leave it removed' },
  home: {
    title: 'What needs measuring?',
    complain: 'Start from a complaint',
    find: 'Find a check, or what is wrong',
    example: 'one side high, hairs, ridges…',
    complaint: (complaint: string) => `“${complaint}” Begins a case.`,
    stopped: 'Begin a case with these words',
    harmless: 'If they mean something harmless, say it in other words.',
    nothing: 'No check and no complaint is described by these words. Try fewer of them: a part, or what you see.',
    phone: 'The phone as an instrument',
    offline: 'All of this works without a signal. Nothing you enter leaves this device.',
  },
};
export default en;
