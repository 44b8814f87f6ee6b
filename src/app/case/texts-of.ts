import type { WordedCause, WordedInspection } from '../../diagnosis/catalogue';

/** What a case says of a check: where the trade's words in it are looked up. */
export const textsOfCheck = ({ title, how, cautions, answers, toolNames }: WordedInspection): readonly string[] => [
  ...[title, ...how, ...cautions, ...toolNames],
  ...answers.map(({ label }) => label),
];

/** What it says of a mend, or of what replaces the part. */
export const textsOfMend = ({ title, part, proof, mend, replace }: WordedCause): readonly string[] => [
  ...[title, part, proof],
  ...[mend, ...(replace ? [replace] : [])].flatMap(({ headline, risk, steps }) => [headline, risk, ...steps]),
];
