import say from './words/en';

export type TermId = keyof typeof say.terms;

const all = Object.entries(say.terms) as readonly (readonly [TermId, (typeof say.terms)[TermId]])[];

const finders = all.map(([id, { said }]) => {
  const words = [...said].map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  return { id, found: new RegExp(`(?<![\\p{L}-])(${words})(?![\\p{L}-])`, 'iu') };
});

/** The words of the trade that stand in these texts, in the glossary's order. */
export function termsIn(texts: readonly string[]): readonly TermId[] {
  return finders.filter(({ found }) => texts.some((text) => found.test(text))).map(({ id }) => id);
}
