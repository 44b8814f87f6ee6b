import { catalogue } from '../../diagnosis/catalogue';
import say from './words/en';

/** The complaints as they stand in the search beside the checks: each begins a case. */
export const complaints = catalogue.symptoms.map(({ id, title, complaint, sayings }) => ({
  id: `complaint/${id}`,
  title,
  question: say.home.complaint(complaint),
  sayings,
  href: `/case/new?symptom=${id}`,
}));
