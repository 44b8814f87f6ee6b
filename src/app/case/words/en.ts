import course from './en/course';
import door from './en/door';
import paper from './en/paper';
import work from './en/work';

/** Words of the case room. */
const en = {
  ...work,
  ...course,
  ...door,
  ...paper,
  /** What comes before a step. */
  cautions: 'Before you touch it',
  quote: (words: string) => `“${words}”`,
  back: 'Back to the case',
};

export default en;
