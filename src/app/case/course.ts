import type { CauseId, Course, Step } from '../../diagnosis/types';

export const sameStep = (a: Step, b: Step): boolean =>
  a.kind === b.kind &&
  (a.kind === 'check' ? b.kind === 'check' && a.check === b.check : true) &&
  (a.kind === 'mend' ? b.kind === 'mend' && a.cause === b.cause : true);

/** The mend that cured, if one did. */
export const cureOf = (course: Course): CauseId | undefined => {
  const cure = course.log.find((entry) => entry.kind === 'mended' && entry.cured);
  return cure?.kind === 'mended' ? cure.cause : undefined;
};
