import { cite, derived, formula } from '../../engine/calculator';
import { length } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';

const lead = cite('ISO 5408:2009', 'powerScrewsLead', true);

export const formulas = [
  formula('P_m = x / N', length.mm, lead),
  formula('dP = P_m - P_h', length.mm, derived('difference')),
  formula('a = k_a * P_m', length.mm, commonPractice),
  formula('P_d = P * n_s', length.mm, cite('ISO 2902:1977', 'designation', true)),
] as const;
