/** Words of the device's records: they come with the first screen. */
const en = {
  machineGone: 'This machine is no longer there: it was removed, perhaps in another tab. Nothing was changed.',
  caseOvertaken:
    'Another tab has gone on with this case meanwhile, and what you did no longer fits. It was not written over: what stands there now is shown, and what you typed is still here.',
  notKept: (reason: string) => `Nothing is being kept at the moment. ${reason}`,
  removed: {
    machine: (name: string) => `“${name}” was removed.`,
    reading: (time: string) => `The reading of ${time} was removed.`,
    photo: 'The photo was removed.',
    case: (called: string) => `The case “${called}” was removed.`,
    unreadable: (key: string) => `The record at ${key} was removed.`,
  },
};
export default en;
