/** Words of the settings and of what is kept on this device. */
const en = {
  title: 'Settings',
  licences: 'Licences of Trammel and of what it is built from',
  mark: 'Decimal mark (both are read)',
  theme: {
    label: 'Page',
    options: { system: 'as the device', light: 'light', dark: 'dark', contrast: 'for sunlight' },
  },
  lengths: { label: 'Lengths in', inch: 'inch' },
  forces: 'Forces in',
  temperatures: 'Temperatures in',
  storage: {
    title: 'On this device',
    stays: 'Everything you keep stays in this browser on this device. Nothing is sent anywhere.',
    lasting: {
      yes: 'The browser has promised not to clear it by itself.',
      'may be cleared':
        'The browser may clear it when the device runs short of room. Save to a file what you cannot measure again.',
      'not known':
        'This browser does not say whether it clears such pages when room runs short. Save to a file now and then.',
    },
    ask: 'Ask the browser not to clear it',
    noPromise: 'It did not promise. Browsers do so rather for pages that are used often or put on the home screen.',
    room: (used: string, free: string) => `Room used: ${used}, the app itself included; free: ${free}.`,
    megabytes: (count: string) => `${count} MB`,
    fewMegabytes: (count: string) => `less than ${count} MB`,
    offline: 'Ready to work without a signal.',
    notYetOffline: 'Not yet ready to work without a signal: open the page once more while online.',
  },
  aside: {
    title: 'Set aside',
    kept: 'These records could not be read. They are kept as they were found and nothing has been written over them.',
    file: (key: string) => `unreadable-${key}.json`,
    save: 'Save it to a file',
    forget: 'Forget it',
  },
};
export default en;
