/** Words around a part of the app that is fetched when it is asked for: they come with the page. */
const en = {
  fetching: (what: string) => `Fetching ${what}…`,
  slow: 'It takes long: the signal is weak, or the host is slow.',
  lost: (what: string) =>
    `Could not fetch ${what}. The signal broke off, or something else answered in place of the host. What you kept and what you typed is not touched.`,
  failed: (what: string, reason: string) =>
    `Something went wrong in ${what}. What you kept is not touched. For whoever looks into it: ${reason}`,
  again: 'Try again',
  trying: 'Trying…',
  still: 'It still cannot be had. Look for a better signal, then try again.',
  all: 'All checks',
};
export default en;
