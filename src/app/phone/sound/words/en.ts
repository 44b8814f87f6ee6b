const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

/** Words of the microphone, for all that listen with it. */
const en = {
  /** What is wrong with the microphone and what to do about it, a sentence each. */
  trouble: {
    'not secure':
      'A browser lends its microphone only to pages that come over https: open this page by its https address.',
    'not supported': 'This browser cannot hand the microphone to a page: a newer one can.',
    refused:
      'The microphone was refused: allow it for this page in the browser (the sign beside the address, “Permissions” or “Site settings”) and for the browser in the phone’s own settings, then listen again.',
    none: 'This device has no microphone that the browser can find: plug one in, or use another phone.',
    taken: 'Another app or call has the microphone: end it there, then listen again.',
    ended: 'The microphone was taken away while listening (unplugged, or its permission withdrawn): listen again.',
    muted:
      'The phone has silenced the microphone (a call, or its privacy switch): listening goes on when it gives it back.',
    suspended: 'The phone holds the sound back until it is touched: press “Go on”.',
    failed: 'Listening broke off through a fault of this page or browser: listen again, or reload the page.',
  },
  goOn: 'Go on',
  rateOff:
    'This phone’s sound does not run at the rate it states, so what is heard may be wrong by several per cent: close other apps that use sound and reload the page.',
  /** What the phone does to the sound although asked not to. */
  meddling: {
    names: {
      'gain control': 'gain control',
      'noise suppression': 'noise suppression',
      'echo cancelling': 'echo cancelling',
    },
    sentence: (names: readonly string[]) => `This phone keeps its ${list(names)} on although asked not to.`,
    unknown: 'What this phone does to the sound before the browser gets it is not known.',
  },
  level: { before: 'Sound now', after: 'over the noise of the room' },
};
export default en;
