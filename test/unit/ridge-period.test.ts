import { describe, expect, it } from 'vitest';
import { symbolOf, evaluate, type Evaluation } from '../../src/engine/evaluate';
import calc from '../../src/calculators/ridge-period/index';
import list from '../../src/calculators/ridge-period/words/en/list';
import words from '../../src/calculators/ridge-period/words/en';
import { rank } from '../../src/calculators/ridge-period/model';
import { parts, repeatOfRounding } from '../../src/calculators/ridge-period/parts';
import { combinations, metaOf, situation } from '../support/calculators';
import { applies } from '../../src/engine/calculator';

const work = (given: Readonly<Record<string, string>>, choices: Readonly<Record<string, string>> = {}): Evaluation =>
  evaluate(calc, situation(calc, given, choices));
const direct = { by: 'direct' };
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const steps = (found: Evaluation): string => plain(found.instruction!.steps.join('\n'));
const headline = (found: Evaluation): string => plain(found.instruction!.sentence);

describe('the list of parts', () => {
  it('has one entry for every mismatch among the formulas, under the same options', () => {
    for (const choices of combinations(calc)) {
      const here = calc.formulas.filter((formula) => applies(formula.when, choices)).map(symbolOf);
      const listed = parts.filter((part) => applies(part.when, choices));
      expect(listed.map((part) => part.mismatch).sort()).toEqual(here.filter((name) => name.startsWith('e_')).sort());
      for (const part of listed) expect(here).toContain(part.period);
      expect(new Set(listed.map((part) => part.id)).size).toBe(listed.length);
      expect(listed.length).toBeLessThanOrEqual(11);
    }
  });

  it('names only checks that there are, and has names short enough for the drawing', () => {
    const titles = Object.values(metaOf).map((one) => one.title);
    for (const { key } of [...parts, repeatOfRounding]) {
      const part = words.parts[key];
      expect(part.short.length, part.short).toBeLessThanOrEqual(21);
      for (const [, title] of part.look.join(' ').matchAll(/“([^”]+)”/g)) expect(titles).toContain(title);
      for (const sentence of [...part.look, part.prove]) expect(sentence).toMatch(/^[A-Z“].*\.$/);
    }
  });
});

describe('the three verdicts', () => {
  it('one part fits: what to look at, and the half turn that proves it', () => {
    const found = work({ L: '79.8 mm', N: '10', P_h: '8 mm', n_s: '4', h: '0.2 mm', r_w: '10.5 mm' });
    expect(found.verdict.state).toBe('within');
    expect(list.verdicts?.within).toBe('One part fits');
    expect(headline(found)).toBe(
      'One turn of the Z screw fits: 8 mm against 8.004 mm. Measure the screw with “Lead-screw straightness”.',
    );
    // Looking and proving move nothing by an amount.
    expect(found.instruction!.movements).toEqual([]);
    expect(found.instruction!.order.steps.map(({ say }) => say).slice(0, 2)).toEqual(['lookMore', 'proveIt']);
    expect(steps(found)).toContain('Next nearest: the pitch of the Z screw’s thread (2 mm); the ridges are 4 times');
    expect(steps(found)).toContain('Ruled out: rounding, odd layer, every layer is a whole number of full steps.');
    expect(steps(found)).toContain('feed gear, one turn (enter: feed gear: diameter where it grips, line width');
  });

  it('none fits: what is nearest, and a miscount that would explain it', () => {
    const found = work({ L: '79.8 mm', N: '11', P_h: '8 mm' });
    expect(found.verdict.state).toBe('beyond');
    expect(found.instruction!.movements).toEqual([]);
    expect(steps(found)).toContain('Nearest: one turn of the Z screw (8 mm); the ridges are 9 % closer');
    expect(steps(found)).toContain('Count again: with 10 spaces instead of 11, one turn of the Z screw would fit.');
    expect(steps(work({ P_w: '7.25 mm ± 0.05', P_h: '8 mm' }, direct))).not.toContain('Count again');
  });

  it('several fit: which further reading parts them', () => {
    const found = work({ L: '80.2 mm', N: '2', x: '0 ± 0.9', P_h: '40 mm', r_w: '6.42 mm ± 0' });
    expect(found.verdict.state).toBe('too close');
    expect(found.instruction!.measureAgain).toBe(true);
    expect(headline(found)).toMatch(/fit\. To part .* measure over \d+ spaces, a wall of \d+ mm/);
    // What would settle it, it says itself.
    expect(found.verdict.settling).toBeUndefined();
  });

  it('two of one period: no reading parts them, the hand does', () => {
    const found = work({ P_w: '2 mm ± 0.02', P_h: '8 mm', n_s: '4', i_g: '4' }, direct);
    expect(found.verdict.state).toBe('too close');
    expect(steps(found)).toContain('have the same period here: no reading parts them');
  });

  it('a part that is not known well enough: what to measure on the machine', () => {
    const found = work({ P_w: '8 mm ± 0.02', P_h: '8 mm', d_g: '11 mm', w: '0.45 mm', l_L: '24.3 mm' }, direct); // prettier-ignore
    expect(found.verdict.state).toBe('too close');
    expect(`${headline(found)}${steps(found)}`).toMatch(/until this is known better: (share of width|feed gear|length of line)/); // prettier-ignore
  });

  it('half or double fits: said as less likely, and not as a fit', () => {
    for (const [P_w, word] of [
      ['3.988 mm ± 0.02', 'Less likely: half of one turn of the Z screw (4 mm)'],
      ['15.952 mm ± 0.05', 'Less likely: twice one turn of the Z screw (16 mm)'],
    ] as const) {
      const found = work({ P_w, P_h: '8 mm' }, direct);
      expect(found.verdict.state).toBe('beyond');
      expect(steps(found)).toContain(word);
    }
  });

  it('is silent about a half that is another part’s own period', () => {
    const found = work({ P_w: '3.988 mm ± 0.02', P_h: '8 mm', n_s: '2' }, direct);
    expect(found.verdict.state).toBe('within');
    expect(headline(found)).toContain('The pitch of the Z screw’s thread fits');
    expect(steps(found)).not.toContain('Less likely: half of one turn');
  });

  it('no reading, or nothing to compare with: no verdict', () => {
    const bare = work({ P_h: '8 mm' });
    expect(bare.verdict.state).toBe('none');
    expect(bare.cannot).toBe('Still needed: length over the ridges, spaces between those two crests.');
    const alone = work({ P_w: '8 mm' }, direct);
    expect(alone.verdict.state).toBe('none');
    expect(headline(alone)).toContain('Nothing to compare them with yet');
    expect(steps(alone)).toContain('screw, one turn (enter: screw lead)');
  });
});

describe('what is compared', () => {
  const ids = (given: Readonly<Record<string, string>>, choices: Readonly<Record<string, string>>) => {
    const found = work(given, choices);
    const known = (symbol: string) => {
      const outcome = found.outcomes[symbol];
      return outcome?.ok ? outcome : undefined;
    };
    return rank({ known, choices: found.choices });
  };

  it('follows the direction of the ridges', () => {
    const machine = { P_w: '40 mm', r_w: '10.5 mm', t_c: '3 s' };
    const up = ids({ ...machine, P_h: '8 mm', h: '0.2 mm', t_L: '1.2 s' }, direct);
    const along = ids({ ...machine, p_b: '2 mm', z_b: '20', v: '50 mm/s' }, { ...direct, way: 'along' });
    expect(up.lines.map((line) => line.part.id).sort()).toEqual(['day', 'heat', 'lead', 'wheel']);
    expect(along.lines.map((line) => line.part.id).sort()).toEqual(['cycle', 'heat', 'pulley', 'step', 'tooth', 'wheel']); // prettier-ignore
  });

  it('leaves out what comes round within two layers', () => {
    const found = ids({ P_w: '0.5 mm', h: '0.3 mm', t_c: '3 s', t_L: '2 s' }, direct);
    expect(found.ruledOut.map(({ part, why }) => [part.id, why])).toEqual([['heat', 'withinTwoLayers']]);
    const slower = ids({ P_w: '0.5 mm', h: '0.3 mm', t_c: '4 s', t_L: '2 s' }, direct);
    expect(slower.lines.map((line) => line.part.id)).toContain('heat');
  });

  it('one start makes thread and screw one part, no gear makes motor and screw one', () => {
    const found = ids({ P_w: '2 mm', P_h: '2 mm', n_s: '1' }, direct);
    expect(found.lines.map((line) => line.part.id)).toEqual(['lead']);
    expect(found.unknown.map((part) => part.id)).not.toContain('thread');
    const geared = ids({ P_w: '2 mm', P_h: '2 mm', n_s: '1', i_g: '3' }, direct);
    expect(geared.lines.map((line) => line.part.id)).toEqual(['lead', 'motor']);
  });

  it('a lead or layer with a doubt says that rounding cannot be told', () => {
    const found = work({ P_w: '8 mm', P_h: '8 mm ± 0.05', h: '0.2 mm ± 0.01' }, direct);
    expect(steps(found)).toContain('rounding, odd layer (enter layer height and drive as marked, without a ±)');
  });

  it('ranks those that fit by uncertainties, the others by how far they are off', () => {
    const found = ids({ P_w: '8 mm ± 0.1', P_h: '8 mm', n_s: '4', r_w: '10.5 mm' }, direct);
    expect(found.lines.map((line) => line.part.id)).toEqual(['lead', 'thread', 'wheel']);
    const both = ids({ P_w: '8.05 mm ± 0.3', P_h: '8 mm', r_w: '0.0492 in ± 0' }, direct);
    expect(both.lines.length).toBe(1);
  });
});
