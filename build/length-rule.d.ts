import type { Rule } from 'eslint';

declare const shortFunctions: Rule.RuleModule;
export default shortFunctions;
