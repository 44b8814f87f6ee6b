import { mergeConfig } from 'vitest/config';
import config, { fast } from './vitest.config.ts';

/** The fast tests alone, as Stryker runs them against each fault that it puts in. */
export default mergeConfig({ ...config, test: undefined }, { test: fast });
