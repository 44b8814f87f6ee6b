/** What is said the same wherever an inspection has such answers. */
export const UNSURE = 'Cannot tell';

export const LIMIT = { within: 'Within its limit', beyond: 'Beyond its limit', close: 'Too close to call' } as const;
