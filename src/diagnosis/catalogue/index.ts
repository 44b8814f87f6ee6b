import type { Answer, Catalogue, Cause, Inspection, Fact, Mend, Symptom, Remedy } from '../types';
import { causes, facts, inspections, symptoms } from './data';
import type { CauseWords, FactWords, InspectionWords, SymptomWords, RemedyWords } from './wording';
import say from './words/en';

export type WordedSymptom = Symptom & SymptomWords;

export interface WordedCause extends Omit<CauseWords, 'mend'>, Cause {
  readonly mend: Mend & RemedyWords;
  readonly replace?: Remedy & RemedyWords;
}

export type WordedFact = Fact & FactWords;

export interface WordedInspection extends Omit<InspectionWords, 'answers'>, Inspection {
  readonly answers: readonly (Answer & { readonly label: string })[];
  /** What its tools are called. */
  readonly toolNames: readonly string[];
}

/** The catalogue with its words beside its data: what a screen shows. The engine needs the data only. */
export interface WordedCatalogue extends Catalogue {
  readonly symptoms: readonly WordedSymptom[];
  readonly causes: readonly WordedCause[];
  readonly facts: readonly WordedFact[];
  readonly inspections: readonly WordedInspection[];
}

function wordedCause(cause: (typeof causes)[number]): WordedCause {
  const { replace, ...rest }: Cause = cause;
  const { replace: replaceWords, ...words }: CauseWords & { readonly replace?: RemedyWords } = say.causes[cause.id];
  return {
    ...rest,
    ...words,
    mend: { ...cause.mend, ...words.mend },
    ...(replace && replaceWords ? { replace: { ...replace, ...replaceWords } } : {}),
  };
}

function wordedInspection(inspection: (typeof inspections)[number]): WordedInspection {
  const { answers, ...words }: InspectionWords = say.inspections[inspection.id];
  return {
    ...inspection,
    ...words,
    answers: inspection.answers.map((answer) => ({ ...answer, label: answers[answer.id] ?? answer.id })),
    toolNames: inspection.tools.map((tool) => say.tools[tool]),
  };
}

/** Everything the diagnosis knows. Load it when a case is opened: it is long. */
export const catalogue: WordedCatalogue = {
  symptoms: symptoms.map((symptom) => ({ ...symptom, ...say.symptoms[symptom.id] })),
  causes: causes.map(wordedCause),
  facts: facts.map((fact) => ({ ...fact, ...say.facts[fact.id] })),
  inspections: inspections.map(wordedInspection),
};
