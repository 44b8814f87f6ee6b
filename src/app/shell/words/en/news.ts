/** What each version brought, for the person who had an earlier one: the newest first. CHANGELOG.md has the whole. */
const en = {
  title: (version: string) => `New in ${version}`,
  understood: 'Understood',
  versions: {
    '0.2.0': [
      'A kept reading explains itself: every result it showed, with name, unit, limit and verdict, stays readable for ever. Readings of the first version are read as they are, and the page says what they did not keep.',
      'What a check of the bed could not fix with screws is kept with the reading too.',
      'A machine’s values stand by the part that they belong to.',
      'The spreadsheet file has five more columns at its end: the limit, its ends, its verdict, and which version kept it.',
    ],
  },
};
export default en;
