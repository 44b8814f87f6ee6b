import { describe, expect, it } from 'vitest';
import calc from '../../src/calculators/dual-z-sync';
import { evaluate } from '../../src/calculators/evaluate';
import { situation } from '../support/calculators';

const given = { S_m: '400 ± 0', S: '400 ± 0', P_h: '8', z: '20' };
const stepsFor = (dh: string) => evaluate(calc, situation(calc, { ...given, dh })).instruction?.steps.join(' ') ?? '';

describe('a count that is not near a whole number of teeth', () => {
  // 0.15 mm is 0.375 of a 0.4 mm tooth, 0.65 mm is 1.625 teeth, 0.75 mm is 1.875.
  it.each(['0.15', '-0.15', '0.65', '-0.65'])(
    '%s mm: another cause is named, also where no whole tooth is out',
    (dh) => {
      expect(stepsFor(`${dh} ± 0`)).toContain('slipped grub screw');
    },
  );

  it.each(['0.75', '-0.75'])('%s mm: a tooth count explains it', (dh) => {
    expect(stepsFor(`${dh} ± 0`)).not.toContain('slipped grub screw');
  });
});

it('warns of heat before a gauge goes under the nozzle', () => {
  expect(calc.cautions.join(' ')).toMatch(/nozzle and bed cool/);
});
