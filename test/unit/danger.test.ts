import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dangerIn } from '../../src/diagnosis/danger';
import { catalogue } from '../../src/diagnosis/catalogue';
import { propose } from '../../src/diagnosis/order';
import { dangerPhrasings } from '../cases/danger-phrasings';
import { innocentPhrasings } from '../cases/innocent-phrasings';
import { some } from '../support/sweep';

/*
 * Before the lists were fitted to them: of the first lot's kept half 56 of 58 were right and 4 of 116 alarmed for nothing; of the later
 * lots, each written when the lists stood, 66 of 70, 73 of 80, 55 of 75 (rarer words) and 70 of 76, and 3 of 65, 2 of 60, 2 of 60 and
 * 4 of 60 (the same words on purpose). Of 27 November 67 of 80 were seen, 56 with the act that was wanted, and 6 of 126 alarmed for
 * nothing. No lot has been written since those classes were mended.
 */

describe('words of danger', () => {
  const alarmed = (all: readonly string[]) => all.filter((text) => dangerIn(text) !== undefined);

  it('open stop with the right first act', () => {
    expect(dangerPhrasings.length).toBeGreaterThan(100);
    const seen = dangerPhrasings.map(([first, text]) => ({ first, text, said: dangerIn(text)?.first }));
    const wrong = seen.filter(({ first, said }) => said !== first);
    console.log(`right first act: ${seen.length - wrong.length} of ${seen.length}`);
    // None goes by unseen; of what is seen, at most one in fifty with another act.
    expect(seen.filter(({ said }) => said === undefined)).toEqual([]);
    expect(wrong.length).toBeLessThanOrEqual(seen.length / 50);
  });

  it('are not seen where nothing is in danger: at most five in a hundred', () => {
    expect(innocentPhrasings.length).toBeGreaterThan(200);
    const wrong = alarmed(innocentPhrasings);
    console.log(`alarmed for nothing: ${wrong.length} of ${innocentPhrasings.length}`);
    expect(wrong.length).toBeLessThanOrEqual(innocentPhrasings.length / 20);
  });

  it('are not seen in what harmless complaints of the catalogue are called', () => {
    const harmless = catalogue.symptoms.filter(({ hazard }) => hazard === undefined);
    const said = harmless.flatMap(({ title, complaint, sayings }) => [title, complaint, ...sayings]);
    expect(alarmed(said)).toEqual([]);
  });

  it('are seen whatever stands round them, in capitals and without a stop', () => {
    for (const [, text] of some(dangerPhrasings, 20)) {
      const shouted = text.toUpperCase().replace(/[.!]+$/, '');
      expect(dangerIn(`Layers are rough. ${shouted}`), shouted).toBeDefined();
      expect(dangerIn(`${text}\nThe prints are fine.`), text).toBeDefined();
    }
  });

  it('never throw, whatever is typed', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => void dangerIn(text)));
  });

  it('make a hazard of any symptom: stop comes first, and nothing powered follows', () => {
    for (const { id: symptom } of catalogue.symptoms) {
      const course = { symptom, facts: {}, log: [], complaint: 'I get a tingle when I touch the frame' };
      expect(propose(catalogue, course).step, symptom).toEqual({
        kind: 'make safe',
        hazard: 'shock',
        first: 'breaker',
      });
      expect(propose(catalogue, course).others).toEqual([]);
    }
    const harmless = { symptom: 'hairs', facts: {}, complaint: 'hairs, and smoke from the plug' };
    const after = propose(catalogue, { ...harmless, log: [{ kind: 'made safe' }] });
    expect(after.step).toEqual({ kind: 'hand over', unplugged: true });
    const offered = after.others.flatMap(({ step }) => (step.kind === 'mend' ? [step] : []));
    expect(offered).toEqual([]);
  });
});
