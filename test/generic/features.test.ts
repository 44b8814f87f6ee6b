import { describe, expect, it } from 'vitest';
import type { InputSpec } from '../../src/engine/calculator';
import { readFeatures, unreadFeatures } from '../../src/reference/features';
import { tools } from '../../src/reference/tools';
import { everyCalculator } from '../support/calculators';

/** Kinds that a tool of the bench reads. */
const readKinds = new Set(tools.map((tool) => tool.kind));

describe.each(everyCalculator)('%s', (id, calc) => {
  it('says what of the thing each input is, so that only tools that read it are offered', () => {
    const lacking = Object.entries<InputSpec>(calc.inputs).flatMap(([symbol, spec]) =>
      readKinds.has(spec.measure.kind.id) && spec.decided !== true && spec.feature === undefined ? [symbol] : [],
    );
    expect(lacking, `${id}: add feature: one of ${[...readFeatures, ...unreadFeatures].join(', ')}`).toEqual([]);
  });

  it('names choices and options that there are, where the feature goes by them', () => {
    for (const [symbol, { feature }] of Object.entries<InputSpec>(calc.inputs)) {
      if (feature === undefined || typeof feature === 'string' || !('choice' in feature)) continue;
      const options = Object.keys(calc.choices[feature.choice]?.options ?? {});
      expect(Object.keys(feature.of).sort(), `${id} ${symbol}: name every option`).toEqual(options.sort());
    }
  });
});
