import say from './words/en';

/* Where the reckoning comes from, for the screen; to be printed as any citation is. */

const published = { basis: 'published', fromMemory: false } as const;

export const bayesSource = {
  ...published,
  source: 'Joint Committee for Guides in Metrology, JCGM 106:2012',
  place: say.sources.bayes,
  fromMemory: true,
};

export const orderSources = [
  { ...published, source: 'Kadane & Simon, Annals of Statistics 5 (1977) 237–255', place: say.sources.chanceOverCost },
  {
    ...published,
    source: 'Heckerman, Breese & Rommelse, Communications of the ACM 38(3) (1995) 49–57',
    place: say.sources.lookedAhead,
  },
];
