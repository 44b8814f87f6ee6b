/** What is said where the app itself does not start: by the page or by the worker, with nothing else at hand. */
const en = {
  title: 'Trammel could not start',
  why: 'A part of it did not arrive whole: the signal broke off, the host was just being changed, or something else answered in its place (a sign-in page of a network does). What you kept is not touched: it lies on this device.',
  again: 'Try again',
  save: 'Save all that is kept to a file',
  saved: (records: number, files: number) =>
    files === 1
      ? `${records} records saved to a file. Trammel reads it in under Settings > Files.`
      : `${records} records saved to ${files} files. Trammel reads them in under Settings > Files, in any order.`,
  file: (day: string, part: number, parts: number) =>
    parts === 1 ? `trammel-rescue-${day}.json` : `trammel-rescue-${day}-${part}.json`,
  empty: 'Nothing is kept in this browser.',
  unreadable: (reason: string) =>
    `What is kept could not be read: ${reason}. Close other tabs of Trammel and try again.`,
  anew: 'Fetch the app anew',
  about: 'Fetching it anew drops the copy of the app on this device, never what you kept. It needs a signal.',
  noHost: 'The host cannot be reached, or something else answers in its place. Nothing was dropped. Try again later.',
};
export default en;
