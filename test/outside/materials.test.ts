import { describe, expect, it } from 'vitest';
import { materials, type Material, type Property } from '../../src/reference/materials';

const all = Object.entries<Material>(materials);
const within = (property: { value: number; half: number } | undefined, low: number, high: number) => {
  expect(property).toBeDefined();
  expect(property!.value - property!.half).toBeLessThanOrEqual(high);
  expect(property!.value + property!.half).toBeGreaterThanOrEqual(low);
};

describe('materials', () => {
  it.each(all)('%s: every number is positive, has a doubt and a source', (_id, material) => {
    for (const property of Object.values(material) as (Property | string)[]) {
      if (typeof property === 'string') continue;
      expect(property.value).toBeGreaterThan(0);
      expect(property.half).toBeGreaterThan(0);
      expect(property.half).toBeLessThan(property.value);
      expect(property.from.source.length).toBeGreaterThan(5);
    }
  });

  // Two routes to one number: Dulong and Petit, 3 R per mole (R = 8.314 J/(mol·K), molar masses from the periodic table).
  // Aluminium, iron and copper come near it at room temperature (24.2, 25.1, 24.4 J/(mol·K) published, CODATA key values).
  it.each([
    ['al-pure', 26.982, 24.2],
    ['copper', 63.546, 24.44],
  ] as const)('%s: specific heat times molar mass', (id, molar, published) => {
    expect(Math.abs((materials[id].heat.value * molar) / 1000 / published - 1)).toBeLessThan(0.01);
  });

  // Wiedemann and Franz: k = L σ T with L = 2.44e-8 W·Ω/K² (theory), T = 293 K. Conductivities of electricity, from memory:
  // copper 58 MS/m by the annealed copper standard (IEC 60028), aluminium 37.7, 6063-T5 55 % of copper's (printed with k).
  it.each([
    ['copper', 58.0e6],
    ['al-pure', 37.7e6],
    ['al-6063', 0.55 * 58.0e6],
  ] as const)('%s: heat and electricity conduct alike', (id, sigma) => {
    expect(Math.abs(materials[id].conductivity.value / (2.44e-8 * sigma * 293) - 1)).toBeLessThan(0.13);
  });

  // Values of the trade other than those the rows quote (common practice, no source): 6063 (T5: shear 115, k 209, 616 °C; T6: shear
  // 150), plastics (density in lb/in³, expansion per °F).
  it('agrees with second printed tables', () => {
    within(materials['al-6063'].shear, 115, 150);
    within(materials['al-6063'].conductivity, 200, 209);
    within(materials.abs.density, 1030, 1050);
    within(materials.abs.expansion, 74, 95.4);
    within(materials.pom.density, 0.051 * 27679.9, 0.051 * 27679.9);
    within(materials.pom.E, 310 * 6.894757e-3, 437 * 6.894757e-3);
    within(materials.pei.E, 430 * 6.894757e-3, 430 * 6.894757e-3);
    within(materials.pc.expansion, 37.5 * 1.8, 37.5 * 1.8);
    within(materials.pa66.expansion, 45 * 1.8, 45 * 1.8);
    within(materials.pp.expansion, 96 * 1.8 * 0.6, 96 * 1.8);
    within(materials.ptfe.density, 2150, 2200);
  });

  // ITS-90: freezing points of aluminium and copper, 660.323 and 1084.62 °C. Leaded brass: 880 to 900 °C (common practice, no source).
  it('melts where it is published to', () => {
    within(materials['al-pure'].melts, 660.323, 660.323);
    within(materials.copper.melts, 1084.62, 1084.62);
    within(materials.brass.melts, 877, 900);
    within(materials.ptfe.melts, 327, 328);
  });

  it('shears at a share of its tensile yield that a ductile solid can have', () => {
    // Tresca 0.5 of the yield is the least; a metal that hardens bears up to about 2 times its low yield stress.
    for (const [id, { shear, yield: stress }] of all) {
      if (!shear || !stress) continue;
      expect(shear.value / stress.value, id).toBeGreaterThan(0.5);
      expect(shear.value / stress.value, id).toBeLessThan(2.1);
    }
  });
});
