import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/diagnosis/catalogue';
import { causeOf } from '../../src/diagnosis/pick';
import { walk } from '../support/hazard-walks';
import { times } from '../support/sweep';

/** Complaints that some cause marked dangerous may be behind, whether they start with unplugging or not. */
const dangerous = catalogue.symptoms.filter(
  ({ hazard, causes }) => hazard !== undefined || causes.some(({ cause }) => causeOf(catalogue, cause).danger),
);

describe('random walks, a quarter of the checks not doable', () => {
  it.each(dangerous)('$id: nothing that heats, powers or moves before the danger is excluded', ({ id }) => {
    const walks = Array.from({ length: times(600, 5) }, (_, i) => walk(catalogue, id, i + 1));
    expect(walks.flatMap(({ breaches }) => breaches).slice(0, 3)).toEqual([]);
    // It withholds, and does not forbid: many walks come to power, and many to a qualified person.
    expect(walks.some(({ poweredSteps }) => poweredSteps > 0)).toBe(true);
    expect(walks.some(({ handedOver }) => handedOver)).toBe(true);
  });
});
