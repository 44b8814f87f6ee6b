import { catalogue } from '../../diagnosis/catalogue';

/** The complaints as they stand in the search beside the checks: each begins a case. */
export const complaints = catalogue.symptoms.map(({ id, title, complaint, sayings }) => ({
  id: `complaint/${id}`,
  title,
  question: `“${complaint}” Begins a case.`,
  sayings,
  href: `/case/new?symptom=${id}`,
}));
