/** Words of the frame around every screen and of the first one; of the page and of its entry among the device's apps. */
const en = {
  page: {
    description: 'Find, measure and prove what ails a filament printer, at the bench, offline.',
    noScript: 'Trammel works on this device alone and needs JavaScript switched on.',
  },
  head: {
    title: 'Trammel',
    home: 'Trammel: all checks',
    main: 'Main',
    machines: 'Machines',
    settings: 'Settings',
  },
  update: {
    ready: 'A new version is ready. What you have typed is kept.',
    now: 'Change over now',
    later: 'Later',
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
