import danger from './en/danger';
import stop from './en/stop';

/** Words of the diagnosis itself; those of its catalogue stand in catalogue/words. */
const en = {
  danger,
  stop,
  /** Why a stored or received case cannot be read. */
  unlisted: {
    symptom: (id: string) => `The catalogue has no symptom “${id}”.`,
    cause: (id: string) => `The catalogue has no cause “${id}”.`,
    inspection: (id: string) => `The catalogue has no check “${id}”.`,
    fact: (id: string) => `The catalogue has no fact “${id}”.`,
  },
  unreadable: {
    noCause: (title: string) => `“${title}” is no cause of this symptom.`,
    noAnswer: (title: string, answer: string) => `“${title}” has no answer “${answer}”.`,
  },
  link: {
    garbled: 'This link is garbled: perhaps a message cut it off. Nothing was taken over. Ask for it again.',
    tooLong: 'This link is too long to be one of Trammel’s. Nothing was taken over.',
    newer: 'This link was made by a newer Trammel. Bring this one up to date, then open the link again.',
  },
  /** What of a work the diagnosis rests on. */
  sources: {
    bayes: '5 and Annex A: Bayes’ rule',
    chanceOverCost: 'chance over cost',
    lookedAhead: 'one check looked ahead',
  },
};
export default en;
