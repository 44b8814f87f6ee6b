import { describe, expect, it } from 'vitest';
import { believe } from '../../src/diagnosis/belief';
import { catalogue } from '../../src/diagnosis/catalogue';
import { propose } from '../../src/diagnosis/order';
import { causeOf, inspectionOf, unreadable } from '../../src/diagnosis/pick';
import type { Course, Entry, Prospect, Proposal } from '../../src/diagnosis/types';
import { weigh } from '../../src/diagnosis/worth';
import say from '../../src/diagnosis/words/en';
import { smallCatalogue, yesNo } from '../support/diagnosis-small';

const course = (symptom: string, log: readonly Entry[] = [], facts: Course['facts'] = {}): Course => ({
  symptom,
  facts,
  log,
});
const answer = (check: string, given: string): Entry => ({ kind: 'answer', check, answer: given });
const shareOf = (log: readonly Entry[], symptom: string, cause: string): number =>
  believe(catalogue, course(symptom, log)).causes[cause]!;
const everything = (proposal: Proposal): Prospect[] => [proposal, ...proposal.others];
const asks = (proposal: Proposal, check: string): boolean =>
  everything(proposal).some(({ step }) => step.kind === 'check' && step.check === check);

describe('belief', () => {
  it('starts at the priors and keeps to one', () => {
    const belief = believe(catalogue, course('hairs'));
    expect(belief.causes['retraction-short']).toBeCloseTo(0.28, 12);
    expect(belief.none).toBeCloseTo(0.05, 12);
    expect(belief.ranked[0]).toBe('retraction-short');
    expect(Object.values(belief.causes).reduce((a, b) => a + b, belief.none)).toBeCloseTo(1, 12);
  });

  it('is moved by facts, both ways', () => {
    const with2 = believe(catalogue, course('first-layer-side', [], { 'two-z-screws': true }));
    const with1 = believe(catalogue, course('first-layer-side', [], { 'two-z-screws': false }));
    expect(with2.causes['sides-unequal']).toBeGreaterThan(0.28);
    expect(with1.causes['sides-unequal']).toBeLessThan(0.02);
  });

  it('moves little on a verdict too close to call, not at all on “cannot tell”, far on a clear one', () => {
    const before = shareOf([], 'layers-shifted', 'belt-slack');
    const close = shareOf([answer('belt-note', 'close')], 'layers-shifted', 'belt-slack');
    const beyond = shareOf([answer('belt-note', 'beyond')], 'layers-shifted', 'belt-slack');
    expect(close).toBeGreaterThan(before);
    expect(close - before).toBeLessThan(0.1);
    expect(beyond - before).toBeGreaterThan(0.4);
    expect(shareOf([answer('pulley-hold', 'unsure')], 'layers-shifted', 'pulley-loose')).toBeCloseTo(0.18, 12);
  });

  it('does not depend on the order of answers, and going back leaves no trace', () => {
    const one = answer('belt-note', 'within');
    const two = answer('pulley-hold', 'yes');
    const forth = believe(catalogue, course('layers-shifted', [one, two]));
    const back = believe(catalogue, course('layers-shifted', [two, one]));
    for (const id of forth.ranked) expect(forth.causes[id]).toBeCloseTo(back.causes[id]!, 14);
    const changed = propose(catalogue, course('layers-shifted', [answer('belt-note', 'beyond'), two]));
    const fresh = propose(catalogue, course('layers-shifted', [two, answer('belt-note', 'beyond')]));
    expect(changed.step).toEqual(fresh.step);
    expect(changed.expected).toBeCloseTo(fresh.expected, 9);
  });

  it('rules out to nothing, or to a tenth of the odds', () => {
    const ruled = (sure: 'certain' | 'fairly'): number =>
      shareOf([{ kind: 'ruled out', cause: 'belt-slack', sure }], 'layers-shifted', 'belt-slack');
    expect(ruled('certain')).toBe(0);
    expect(ruled('fairly')).toBeCloseTo(0.024 / (0.76 + 0.024), 12);
  });

  it('lets a case go on after a mend in vain: some doubt of the mend stays, and a second fault is allowed for', () => {
    const proven = [answer('belt-note', 'beyond')];
    const inVain: Entry[] = [...proven, { kind: 'mended', cause: 'belt-slack', cured: false }];
    const before = believe(catalogue, course('layers-shifted', proven));
    const after = believe(catalogue, course('layers-shifted', inVain));
    expect(before.causes['belt-slack']).toBeGreaterThan(0.7);
    expect(after.causes['belt-slack']).toBeGreaterThan(0.01);
    expect(after.causes['belt-slack']).toBeLessThan(0.3);
    expect(after.causes['pulley-loose']).toBeGreaterThan(0.1);
    const { step } = propose(catalogue, course('layers-shifted', inVain));
    expect(step.kind).not.toBe('closed');
    expect(step).not.toEqual({ kind: 'mend', cause: 'belt-slack' });
  });
});

describe('the next step', () => {
  it('is open to overruling: every check and mend is offered with its expected effort, best first', () => {
    const proposal = propose(catalogue, course('oval-holes'));
    const efforts = everything(proposal).map(({ expected }) => expected);
    expect(efforts).toEqual([...efforts].sort((a, b) => a - b));
    expect(everything(proposal).filter(({ step }) => step.kind === 'mend')).toHaveLength(6);
    expect(asks(proposal, 'long-move')).toBe(true);
    const skipped = propose(catalogue, course('oval-holes', [{ kind: 'skip', check: 'long-move' }]));
    expect(asks(skipped, 'long-move')).toBe(false);
    expect(skipped.belief).toEqual(proposal.belief);
  });

  it('says what each answer would do, by the same rule as when it is given', () => {
    const proposal = propose(catalogue, course('ridges-regular'));
    if (proposal.step.kind !== 'check') throw new Error('a check was to be expected');
    const { check } = proposal.step;
    expect(proposal.outlooks.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
    for (const outlook of proposal.outlooks) {
      expect(outlook.belief).toEqual(believe(catalogue, course('ridges-regular', [answer(check, outlook.answer)])));
    }
    // Belief is conserved: what the answers would make of a share averages to what it is.
    for (const id of proposal.belief.ranked) {
      const mean = proposal.outlooks.reduce((sum, { chance, belief }) => sum + chance * belief.causes[id]!, 0);
      expect(mean).toBeCloseTo(proposal.belief.causes[id]!, 12);
    }
    expect(proposal.parts.length).toBeGreaterThan(0);
  });

  it('names a runner-up only where the two searches differ by less than a fifth', () => {
    const two = (minutes: number): Proposal =>
      propose(
        smallCatalogue(
          { a: { prior: 0.45, minutes: 40 }, b: { prior: 0.45, minutes: 40 } },
          {
            x: { minutes: 5, given: { a: yesNo(0.9) }, otherwise: yesNo(0.1) },
            y: { minutes, given: { b: yesNo(0.9) }, otherwise: yesNo(0.1) },
          },
          { none: 0.1 },
        ),
        course('s'),
      );
    expect(two(5.2).step).toEqual({ kind: 'check', check: 'x' });
    expect(two(5.2).close?.step).toEqual({ kind: 'check', check: 'y' });
    expect(two(39).close).toBeUndefined();
  });

  it('counts parts as the minutes that would earn them: cheap work looks longer, dear work mends sooner', () => {
    const mend = (worth: number): number =>
      everything(propose(catalogue, course('lets-go'), { worth })).find(
        ({ step }) => step.kind === 'mend' && step.cause === 'surface-worn',
      )!.effort;
    expect(mend(20)).toBeCloseTo(18 + (60 * 14) / 20, 9);
    expect(mend(60)).toBeCloseTo(18 + (60 * 14) / 60, 9);
  });

  it('ends: closed by a cure, handed over when nothing is worth trying', () => {
    const cured: Entry = { kind: 'mended', cause: 'belt-slack', cured: true };
    expect(propose(catalogue, course('layers-shifted', [cured])).step).toEqual({ kind: 'closed', cause: 'belt-slack' });
    expect(believe(catalogue, course('layers-shifted', [cured])).causes['belt-slack']).toBe(1);
    const { causes } = catalogue.symptoms.find(({ id }) => id === 'layers-shifted')!;
    const all = causes.map(({ cause }): Entry => ({ kind: 'ruled out', cause, sure: 'certain' }));
    const given = propose(catalogue, course('layers-shifted', all));
    expect(given.step).toEqual({ kind: 'hand over' });
    expect(given.belief.none).toBe(1);
  });
});

describe('safety first', () => {
  const hazards = catalogue.symptoms.filter(({ hazard }) => hazard !== undefined).map(({ id }) => id);

  it.each(hazards)('%s starts with off and unplug, whatever else has been entered', (symptom) => {
    const { causes } = catalogue.symptoms.find(({ id }) => id === symptom)!;
    const logs: Entry[][] = [
      [],
      [{ kind: 'ruled out', cause: causes[0]!.cause, sure: 'certain' }],
      [{ kind: 'mended', cause: causes[0]!.cause, cured: false }],
    ];
    for (const log of logs) {
      const proposal = propose(catalogue, course(symptom, log));
      expect(proposal.step.kind).toBe('make safe');
      expect(proposal.others).toEqual([]);
    }
    expect(propose(catalogue, course(symptom, [{ kind: 'made safe' }])).step.kind).not.toBe('make safe');
  });

  it('offers no powered check before each danger was looked at unplugged; skipping does not free it', () => {
    const safe: Entry = { kind: 'made safe' };
    const cold = ['sensor-tug', 'sensor-ohms', 'plug-look'];
    const powered = ['temperature-swing', 'fan-drop', 'heating-curve', 'supply-volts'];
    const offered = (log: readonly Entry[]): string[] =>
      powered.filter((check) => asks(propose(catalogue, course('temperature-wanders', [safe, ...log])), check));
    expect(offered([])).toEqual([]);
    expect(offered(cold.map((check): Entry => ({ kind: 'skip', check })))).toEqual([]);
    expect(offered(cold.slice(0, 2).map((check) => answer(check, check === 'sensor-ohms' ? 'within' : 'no')))).toEqual(
      [],
    );
    const looked = [answer('sensor-tug', 'no'), answer('sensor-ohms', 'within'), answer('plug-look', 'no')];
    expect(offered(looked)).toEqual(powered);
    // “Cannot tell” is no look, as long as another cold check could.
    expect(offered([answer('sensor-ohms', 'close'), answer('sensor-tug', 'no'), answer('plug-look', 'no')])).toEqual(
      [],
    );
    const { withheld } = propose(catalogue, course('temperature-wanders', [safe]));
    expect(withheld).toEqual(expect.arrayContaining(powered));
  });
});

describe('stored courses', () => {
  it('are read, or refused with a sentence', () => {
    expect(unreadable(catalogue, course('hairs', [answer('hiss', 'yes')], { 'open-filament': true }))).toBeUndefined();
    expect(unreadable(catalogue, course('no-such'))).toBe(say.unlisted.symptom('no-such'));
    expect(unreadable(catalogue, course('hairs', [answer('hiss', 'loud')]))).toBe(
      say.unreadable.noAnswer(inspectionOf(catalogue, 'hiss').title, 'loud'),
    );
    expect(unreadable(catalogue, course('hairs', [{ kind: 'mended', cause: 'belt-slack', cured: true }]))).toBe(
      say.unreadable.noCause(causeOf(catalogue, 'belt-slack').title),
    );
    expect(unreadable(catalogue, course('hairs', [], { moon: true }))).toBe(say.unlisted.fact('moon'));
    expect(() => propose(catalogue, course('no-such'))).toThrow(RangeError);
  });
});

describe('repair or replace', () => {
  it('reckons both at the hour’s worth', () => {
    const slack = causeOf(catalogue, 'belt-slack');
    const { mend, replace, cheaper } = weigh(slack, 30);
    expect(mend).toBeCloseTo(12 * 0.5, 12);
    expect(replace).toBeCloseTo(8 + 45 * 0.5, 12);
    expect(cheaper).toBe('mend');
    // A damp spool: 15 minutes and 0.5, or 5 minutes and 20. At 120 an hour that is 30.5 against 30.
    expect(weigh(causeOf(catalogue, 'filament-damp'), 120).cheaper).toBe('alike');
    expect(weigh(causeOf(catalogue, 'filament-damp'), 300).cheaper).toBe('replace');
  });
});

describe('what heats, powers or moves', () => {
  const safe: Entry = { kind: 'made safe' };
  const powers = (proposal: Proposal): string[] =>
    everything(proposal).flatMap(({ step }) =>
      step.kind === 'mend'
        ? [step.cause]
        : step.kind === 'check' && inspectionOf(catalogue, step.check).powered
          ? [step.check]
          : [],
    );
  const far = (log: readonly Entry[], rest: Partial<Course> = {}): Proposal =>
    propose(catalogue, { ...course('far-too-hot', [safe, ...log]), ...rest });
  const tug = answer('sensor-tug', 'yes');

  it('is withheld, mends with their trial too, while another danger waits; then the mend of what was found comes', () => {
    const waiting = far([tug]);
    expect(powers(waiting)).toEqual([]);
    expect(waiting.dangers.found).toEqual(['sensor-fallen']);
    expect(waiting.dangers.unseen).toContain('switch-shorted');
    expect(waiting.withheldMends).toContain('sensor-fallen');
    expect(waiting.step.kind).toBe('check');
    const cold = [answer('switch-ohms', 'no'), answer('sensor-ohms', 'within'), answer('heater-ohms', 'within')];
    const looked = far([tug, ...cold]);
    expect(looked.step).toEqual({ kind: 'mend', cause: 'sensor-fallen' });
    expect(powers(looked)).toEqual(['sensor-fallen']);
    // Mended in vain: the way to what needs power is open.
    const mended = far([
      tug,
      ...cold,
      { kind: 'mended', cause: 'sensor-fallen', cured: false },
      answer('mains-test', 'sound'),
    ]);
    expect(powers(mended).length).toBeGreaterThan(0);
  });

  it('comes to a qualified person where a look cannot be had: it stays unplugged', () => {
    for (const given of [{ kind: 'skip', check: 'switch-ohms' } as const, answer('switch-ohms', 'unsure')]) {
      const stuck = far([given]);
      expect(stuck.step).toEqual({ kind: 'hand over', unplugged: true });
      expect(powers(stuck)).toEqual([]);
    }
  });

  it('is not freed by a person’s word that it is not this one', () => {
    const log = ['sensor-fallen', 'switch-shorted', 'sensor-contact', 'heater-strong', 'relay-closed'].map(
      (cause): Entry => ({ kind: 'ruled out', cause, sure: 'certain' }),
    );
    expect(powers(far(log))).toEqual([]);
  });

  it('waits in a shock’s case for a qualified person’s test, not for a look from outside', () => {
    const shocked = (log: readonly Entry[]): Proposal =>
      propose(catalogue, course('comes-and-goes', [safe, ...log], { 'shock-felt': true, 'mains-inside': true }));
    expect(powers(shocked([answer('mains-look', 'sound')]))).toEqual([]);
    expect(powers(shocked([{ kind: 'skip', check: 'mains-test' }, answer('mains-look', 'sound')]))).toEqual([]);
    expect(powers(shocked([answer('mains-test', 'sound')])).length).toBeGreaterThan(0);
  });

  it('waits for good where it could not be switched off, and for now where someone will', () => {
    const told = (why: 'will do' | 'cannot'): Proposal =>
      propose(catalogue, course('far-too-hot', [{ kind: 'not safe', why }]));
    expect(told('cannot').step).toEqual({ kind: 'hand over', unplugged: true });
    expect(told('cannot').others).toEqual([]);
    expect(told('will do').step.kind).toBe('make safe');
    const after = propose(catalogue, course('far-too-hot', [{ kind: 'not safe', why: 'cannot' }, safe]));
    expect(after.step.kind).toBe('check');
    const taken = propose(catalogue, course('far-too-hot', [safe, { kind: 'not safe', why: 'cannot' }]));
    expect(taken.step.kind).toBe('hand over');
  });
});
