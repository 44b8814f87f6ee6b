import { formatNumber } from '../../../quantity/format';
import type { DecimalMark } from '../../../quantity/parse';
import say from './words/en';

/** Standard uncertainties as shares of the length. */
export interface Shares {
  readonly fit: number;
  readonly marks: number;
  readonly distance: number;
}

/** Which source the doubt comes from mostly, and what would lessen it; `ofFit` where it is the picture itself. */
export function adviceOn({ fit, marks, distance }: Shares, ofFit: string): string {
  if (marks >= fit && marks >= distance) return say.result.advice.marks;
  return distance >= fit ? say.result.advice.distance : ofFit;
}

const percent = (share: number, mark: DecimalMark) =>
  share < 1e-4 ? say.result.under(formatNumber(0.01, 2, mark)) : say.result.percent(formatNumber(share * 100, 2, mark));

export function sharesOf({ fit, marks, distance }: Shares, mark: DecimalMark): string {
  return say.result.shares(percent(fit, mark), percent(marks, mark), percent(distance, mark));
}
