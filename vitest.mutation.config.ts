import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { mergeConfig } from 'vitest/config';
import config, { fast } from './vitest.config.ts';

/** From the quickest folders to the slowest: a run ends with the first test that sees the fault. */
const ORDER = ['src/', 'test/unit/', 'test/generic/', 'test/outside/', 'test/sweep/', 'test/slow/'];

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => ORDER.findIndex((folder) => moduleId.includes(`/${folder}`));
    return Promise.resolve(files.toSorted((a, b) => rank(a) - rank(b) || (a.moduleId < b.moduleId ? -1 : 1)));
  }
}

/** All tests that work anything out, as Stryker runs them against each fault that it puts in; of each sweep a larger part. */
export default mergeConfig(
  { ...config, test: undefined },
  {
    test: {
      ...fast,
      env: { SWEEP: 'larger' },
      include: [...fast.include, 'test/slow/**/*.test.ts'],
      // Of the build and of the rule on words.
      exclude: ['node_modules/**', 'test/slow/{language,words-rule}.test.ts'],
      sequence: { sequencer: QuickFirst },
    },
  },
);
