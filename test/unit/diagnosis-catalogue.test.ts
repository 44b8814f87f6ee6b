import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/diagnosis/catalogue';
import * as data from '../../src/diagnosis/catalogue/data';
import { causeOf, inspectionsFor, factsFor } from '../../src/diagnosis/pick';
import { NONE, type Inspection, type Likelihoods } from '../../src/diagnosis/types';

/** Issue 5's calculators, until their folders are there. */
const TO_COME = [
  'screw-holding',
  'heater-check',
  'sensor-check',
  'steps-per-length',
  'squareness',
  'bed-tram',
  'ringing',
  'carriage-binding',
  'test-column',
  'workshop-air',
  'filament-moisture',
  'missed-feed',
  'resume-height',
];
const folders = readdirSync('src/calculators', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

const { symptoms, causes, facts, inspections } = catalogue;
const rowsOf = (check: Inspection): Likelihoods[] => [...Object.values(check.given), check.otherwise];
const sumOf = (row: Likelihoods): number => Object.values(row).reduce((sum, p) => sum + p, 0);

/** The largest difference of an answer's share between a cause and the rest: 0 tells nothing, 1 everything. */
function telling(check: Inspection, cause: string): number {
  const row = check.given[cause];
  return row ? Math.max(...Object.entries(row).map(([answer, p]) => Math.abs(p - check.otherwise[answer]!))) : 0;
}

describe('the catalogue', () => {
  it('covers the symptoms of calculators.md, and the warm plug of issue 6', () => {
    expect(symptoms.map(({ id }) => id).sort()).toEqual(
      [
        'ridges-regular',
        'ridges-irregular',
        'first-layer-side',
        'layers-shifted',
        'hairs',
        'slender-wobbles',
        'lets-go',
        'screw-spins',
        'gantry-sinks',
        'far-too-hot',
        'temperature-wanders',
        'starved-band',
        'corner-ripples',
        'oval-holes',
        'one-room',
        'comes-and-goes',
        'smell-or-warm-plug',
      ].sort(),
    );
  });

  it('gives every id once, and none is that of the unlisted fault', () => {
    for (const list of [symptoms, causes, facts, inspections]) {
      const ids = list.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids).not.toContain(NONE);
    }
  });

  it('resolves every id it names, and uses everything it lists', () => {
    const causeIds = new Set(causes.map(({ id }) => id));
    const named = new Set(symptoms.flatMap((symptom) => symptom.causes.map(({ cause }) => cause)));
    expect([...named].filter((id) => !causeIds.has(id))).toEqual([]);
    expect([...causeIds].filter((id) => !named.has(id))).toEqual([]);
    const told = inspections.flatMap(({ given }) => Object.keys(given));
    expect(told.filter((id) => !causeIds.has(id))).toEqual([]);
    const factIds = new Set(facts.map(({ id }) => id));
    const asked = new Set(causes.flatMap(({ raisedBy }) => raisedBy.map(({ fact }) => fact)));
    expect([...asked].filter((id) => !factIds.has(id))).toEqual([]);
    expect([...factIds].filter((id) => !asked.has(id))).toEqual([]);
  });

  it('keeps every word apart from its data, which holds ids only', () => {
    const stringsIn = (value: unknown): string[] =>
      typeof value === 'string'
        ? [value]
        : typeof value === 'object'
          ? Object.values(value ?? {}).flatMap(stringsIn)
          : [];
    const found = stringsIn({ ...data });
    expect(found.length).toBeGreaterThan(500);
    expect(found.filter((text) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(text) && text !== 'too close')).toEqual([]);
  });

  it('names only calculators that are there or to come, and only in checks of that kind', () => {
    const known = new Set([...folders, ...TO_COME]);
    const named = [...inspections.map(({ calculator }) => calculator), ...causes.map(({ mend }) => mend.calculator)];
    expect(named.filter((id) => id !== undefined && !known.has(id))).toEqual([]);
    for (const check of inspections) expect(check.kind === 'calculator').toBe(check.calculator !== undefined);
  });

  it.each(symptoms)(
    '$id: four to ten causes whose shares make one with the unlisted',
    ({ causes: suspects, none, sayings }) => {
      expect(suspects.length).toBeGreaterThanOrEqual(4);
      expect(suspects.length).toBeLessThanOrEqual(10);
      expect(suspects.reduce((sum, { prior }) => sum + prior, none)).toBeCloseTo(1, 12);
      for (const share of [none, ...suspects.map(({ prior }) => prior)]) expect(share).toBeGreaterThan(0);
      expect(new Set(suspects.map(({ prior }) => prior)).size).toBeGreaterThan(2);
      expect(sayings.length).toBeGreaterThanOrEqual(5);
    },
  );

  it.each(symptoms)(
    '$id: every cause can be told, by a check that is right far more often than by chance',
    ({ id, causes: suspects }) => {
      for (const { cause } of suspects) {
        const best = Math.max(...inspectionsFor(catalogue, id).map((check) => telling(check, cause)));
        expect(best, cause).toBeGreaterThan(0.5);
      }
      // Bits of the search stand in one integer.
      expect(inspectionsFor(catalogue, id).length).toBeLessThan(31);
      expect(factsFor(catalogue, id).length).toBeGreaterThan(0);
    },
  );

  it.each(inspections)('$id: answers that can all come, make one, and are not flat', (check) => {
    const answers = check.answers.map(({ id }) => id).sort();
    for (const row of rowsOf(check)) {
      expect(Object.keys(row).sort()).toEqual(answers);
      expect(sumOf(row)).toBeCloseTo(1, 12);
      for (const p of Object.values(row)) expect(p).toBeGreaterThan(0);
    }
    expect(Math.max(...Object.keys(check.given).map((cause) => telling(check, cause)))).toBeGreaterThan(0.4);
    expect(check.minutes).toBeGreaterThan(0);
    expect(check.how.length).toBeGreaterThan(0);
  });

  it('maps every verdict of a calculator to an answer', () => {
    for (const { kind, answers, id } of inspections) {
      if (kind !== 'calculator') continue;
      const verdicts = new Set(answers.map(({ verdict }) => verdict));
      expect([...verdicts].sort(), id).toEqual(['beyond', 'too close', 'within']);
    }
  });

  it('moves the belief only a little where a verdict is too close to call, or nobody can tell', () => {
    for (const check of inspections) {
      for (const answer of check.answers) {
        if (answer.verdict !== 'too close' && answer.id !== 'unsure') continue;
        for (const row of Object.values(check.given)) {
          const odds = row[answer.id]! / check.otherwise[answer.id]!;
          expect(Math.max(odds, 1 / odds), `${check.id}, ${answer.id}`).toBeLessThan(1.6);
        }
      }
    }
  });

  it.each(causes)('$id: a mend with steps, minutes, a risk and a proof', ({ mend, replace, proof, raisedBy }) => {
    const ways = replace ? [mend, replace] : [mend];
    for (const { steps, minutes, cost, risk } of ways) {
      expect(steps.length).toBeGreaterThan(0);
      expect(minutes).toBeGreaterThan(0);
      expect(cost).toBeGreaterThanOrEqual(0);
      expect(risk).toMatch(/\.$/);
    }
    expect(mend.works).toBeGreaterThan(0.5);
    expect(mend.works).toBeLessThan(1);
    expect(proof).toMatch(/\.$/);
    for (const { factor, otherwise = 1 } of raisedBy) {
      expect(factor).toBeGreaterThan(0);
      expect(otherwise).toBeGreaterThan(0);
      expect(factor).not.toBe(1);
    }
  });

  it('has a cold check for every danger, and unplugs before its mend', () => {
    for (const { id } of causes.filter(({ danger }) => danger)) {
      const cold = inspections.filter((check) => !check.powered && telling(check, id) >= 0.5);
      expect(cold.length, id).toBeGreaterThan(0);
      expect(causeOf(catalogue, id).mend.steps[0]).toMatch(/^Unplugged/);
    }
    for (const { id, causes: suspects, hazard } of symptoms) {
      if (suspects.some(({ cause }) => causeOf(catalogue, cause).danger && cause !== 'sensor-loose')) {
        expect(hazard, id).toBeDefined();
      }
    }
  });

  it('warns first where a hot end, a bed or a moving screw is near', () => {
    for (const { id, powered, how, cautions } of inspections) {
      if (powered && /\b(hot|heat|heating|printing temperature|screw)\b/i.test(how.join(' '))) {
        expect(cautions.length, id).toBeGreaterThan(0);
      }
    }
  });
});

describe('dangers', () => {
  const dangerous = causes.filter(({ danger }) => danger);

  it('are named by every complaint that starts with unplugging', () => {
    for (const { id, hazard, causes: suspects } of symptoms) {
      if (hazard === undefined) continue;
      expect(suspects.filter(({ cause }) => causeOf(catalogue, cause).danger).length, id).toBeGreaterThan(0);
    }
  });

  it('of the mains side are cleared by a qualified person’s test, and mended by nobody else', () => {
    const mains = causes.filter(({ qualified }) => qualified);
    expect(mains.map(({ id }) => id).sort()).toEqual(['earth-missing', 'insulation-damaged', 'relay-closed']);
    for (const { id, danger, mend } of mains) {
      expect(danger, id).toBe(true);
      expect(
        inspections.some((check) => check.qualified && telling(check, id) >= 0.5),
        id,
      ).toBe(true);
      expect(mend.steps.join(' '), id).toMatch(/qualified person/);
    }
    for (const { id, given, tools, how } of inspections) {
      if (!mains.some((cause) => given[cause.id])) continue;
      // Nobody is told to put a meter to it.
      expect(tools, id).toEqual([]);
      expect(how.join(' '), id).not.toMatch(/\bmeter|\bohms|\bvolts/i);
    }
  });

  it('say of each mend whether it or its trial needs power', () => {
    const heats =
      /\b(heating|heat the|heat;|heat,|warm the|hot as|at temperature|run the|print (?:the|one|two|again|10)|feed \d|watch (?:a|five)|tram the bed|set the gap)/i;
    for (const { id, mend, replace } of causes) {
      for (const way of replace ? [mend, replace] : [mend]) {
        if (heats.test(way.steps.join('\n'))) expect(way.powered || way.trialPowered, id).toBe(true);
      }
    }
    for (const { id, mend } of dangerous) expect(mend.trialPowered, id).toBe(true);
  });
});

describe('what is said with heat and tools', () => {
  const everyWay = causes.flatMap(({ id, mend, replace }) =>
    (replace ? [mend, replace] : [mend]).map((way) => ({ id, ...way })),
  );
  const at = (steps: readonly string[], words: RegExp): number => steps.findIndex((one) => words.test(one));

  it('unplugs a hot end before a tool touches it, holds the block, and seats the nozzle on the heat break', () => {
    const hot = everyWay.filter(
      ({ steps }) =>
        /\bnozzle\b.*\b(turn|out|back|tighten)|\b(turn|tighten)\b.*\bnozzle\b/i.test(steps.join('\n')) &&
        /\bblock\b/.test(steps.join('\n')),
    );
    expect(hot.map(({ id }) => id).sort()).toEqual(['nozzle-blocked', 'nozzle-worn', 'plastic-on-block']);
    for (const { id, steps, risk } of hot) {
      const order = [
        at(steps, /heat until .*liner’s limit/i),
        at(steps, /unplug before a tool/i),
        at(steps, /block with a second spanner/i),
        at(steps, /nozzle.*half a turn/i),
        at(steps, /heat break home/i),
        at(steps, /1 to 3 N·m/),
        at(steps, /gap must stay under its hexagon/i),
      ];
      expect(
        order.every((step) => step >= 0),
        id,
      ).toBe(true);
      expect(
        [...order].sort((a, b) => a - b),
        id,
      ).toEqual(order);
      expect(risk, id).toMatch(/^Burns/);
    }
  });

  it('chooses a thermal cut-off by its holding temperature, crimped', () => {
    const spoken = everyWay.flatMap(({ steps }) => steps).filter((step) => step.includes('thermal cut-off'));
    expect(spoken.length).toBeGreaterThan(0);
    for (const step of spoken) {
      expect(step).toMatch(/holding temperature/);
      expect(step).toMatch(/IEC 60691/);
      expect(step).toMatch(/crimp/i);
    }
  });

  it('takes bed heights hot and soaked, nozzle wiped and below oozing, and warns of burns', () => {
    for (const { id, how, cautions, calculator } of inspections.filter((one) => one.calculator === 'bed-tram')) {
      const text = how.join(' ');
      for (const words of [/heat the bed/i, /soak/i, /wipe the nozzle/i, /ooze/i])
        expect(text, `${id} ${calculator}`).toMatch(words);
      expect(cautions.join(' '), id).toMatch(/burn/);
    }
    // Nobody takes them cold anywhere else.
    const cold = everyWay.filter(({ steps }) => /heights[^.]*cold/.test(steps.join('\n')));
    expect(cold.map(({ id }) => id)).toEqual([]);
  });

  it('lets no water film judge a polymer sheet, and saves no part with a seam that must not fail', () => {
    const film = inspections.find(({ id }) => id === 'water-film')!;
    expect(film.how[0]).toMatch(/glass or bare metal only.*polymer sheet/i);
    const starved = symptoms
      .find(({ id }) => id === 'starved-band')!
      .causes.map(({ cause }) => causeOf(catalogue, cause));
    const mine = starved.filter(({ part }) => part !== 'Filament');
    for (const { id, mend } of mine)
      expect(mend.risk, id).toMatch(/person, heat, mains or a raised load.*never saved with a seam/);
  });
});
