import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import * as math from 'mathjs';
import { describe, expect, it } from 'vitest';
import { allKinds } from '../../src/quantity/all-kinds';
import * as kinds from '../../src/quantity/kinds';
import { fromSi, toSi, type Kind } from '../../src/quantity/unit';

/*
 * Every unit we offer against mathjs and, where it is installed, Debian's `units` program (its table follows NIST SP 811).
 * `mathjs` is an expression that mathjs works out with its own unit table; `program` the same for `units`.
 */

interface Outside {
  readonly mathjs: string;
  readonly program: string;
}

const same = (text: string): Outside => ({ mathjs: text, program: text });
const both = (mathjs: string, program: string): Outside => ({ mathjs, program });

const outside: Readonly<Record<string, Outside>> = {
  'count.one': same('1'),
  'money.one': same('1'),
  'ratio.one': same('1'),
  'ratio.percent': both('1/100', 'percent'),
  'angle.deg': both('1 deg', 'degree'),
  'angle.rad': both('1 rad', 'radian'),
  'angle.turn': both('1 cycle', 'turn'),
  'angle.arcmin': both('1 arcmin', 'arcmin'),
  'slope.mm_m': same('1 mm / (1 m)'),
  'slope.percent': both('1/100', 'percent'),
  'slope.in_ft': same('1 in / (1 ft)'),
  'length.mm': same('1 mm'),
  'length.um': same('1 um'),
  'length.cm': same('1 cm'),
  'length.m': same('1 m'),
  'length.in': same('1 in'),
  'length.thou': both('1 mil', 'mil'),
  'length.ft': same('1 ft'),
  'area.mm2': same('1 mm^2'),
  'area.in2': same('1 in^2'),
  'volume.mm3': same('1 mm^3'),
  'volume.cm3': same('1 cm^3'),
  'second moment of area.mm4': same('1 mm^4'),
  'mass.g': same('1 g'),
  'mass.kg': same('1 kg'),
  'mass.oz': both('1 oz', 'ounce'),
  'mass.lb': both('1 lbm', 'lb'),
  'time.s': same('1 s'),
  'time.ms': same('1 ms'),
  'time.min': both('1 minute', 'minute'),
  'time.h': both('1 hour', 'hour'),
  'frequency.Hz': same('1 Hz'),
  'frequency.kHz': same('1 kHz'),
  'shear rate.per_s': same('1 / (1 s)'),
  'number per length.per_mm': same('1 / (1 mm)'),
  'number per length.per_in': same('1 / (1 in)'),
  'speed.mm_s': same('1 mm / (1 s)'),
  'speed.mm_min': both('1 mm / (1 minute)', 'mm/minute'),
  'speed.m_s': same('1 m / (1 s)'),
  'speed.in_s': same('1 in / (1 s)'),
  'acceleration.mm_s2': same('1 mm / (1 s^2)'),
  'acceleration.m_s2': same('1 m / (1 s^2)'),
  'flow.mm3_s': same('1 mm^3 / (1 s)'),
  'force.N': same('1 N'),
  'force.mN': same('1 mN'),
  'force.kgf': same('1 kgf'),
  'force.gf': both('1 kgf / 1000', 'gram force'),
  'force.lbf': same('1 lbf'),
  'force.ozf': both('1 lbf / 16', 'ounce force'),
  'torque.N_mm': same('1 N * 1 mm'),
  'torque.N_m': same('1 N * 1 m'),
  'torque.lbf_in': same('1 lbf * 1 in'),
  'torque.ozf_in': both('1 lbf * 1 in / 16', 'ounce force in'),
  'pressure.MPa': same('1 MPa'),
  'pressure.GPa': same('1 GPa'),
  'pressure.kPa': same('1 kPa'),
  'pressure.Pa': same('1 Pa'),
  // mathjs 15.2.0 keeps psi rounded (6 parts in 10^11 low against its own lbf and in); `units` has it whole.
  'pressure.psi': both('1 lbf / (1 in^2)', 'psi'),
  'consistency.Pa_sn': same('1 Pa'),
  'density.g_cm3': same('1 g / (1 cm^3)'),
  'density.kg_m3': same('1 kg / (1 m^3)'),
  'mass per length.g_m': same('1 g / (1 m)'),
  'mass per length.kg_m': same('1 kg / (1 m)'),
  'stiffness.N_mm': same('1 N / (1 mm)'),
  'stiffness.N_m': same('1 N / (1 m)'),
  'stiffness.lbf_in': same('1 lbf / (1 in)'),
  'temperature.C': both('1 K', 'K'),
  'temperature.F': both('1 degR', 'degR'),
  'temperature.K': same('1 K'),
  'temperature difference.K': same('1 K'),
  'temperature difference.F': both('1 degR', 'degF'),
  'thermal expansion.um_mK': same('1 um / (1 m K)'),
  'thermal expansion.per_K': same('1 / (1 K)'),
  'bending stiffness.N_mm2': same('1 N mm^2'),
  'bending stiffness.N_m2': same('1 N m^2'),
  'power.W': same('1 W'),
  'power.mW': same('1 mW'),
  'voltage.V': same('1 V'),
  'voltage.mV': same('1 mV'),
  'current.A': same('1 A'),
  'current.mA': same('1 mA'),
  'resistance.ohm': same('1 ohm'),
  'resistance.kohm': same('1 kohm'),
  'resistance.Mohm': same('1 Mohm'),
  'energy.kJ': same('1 kJ'),
  'energy.J': same('1 J'),
  'heat capacity.J_K': same('1 J / (1 K)'),
  'specific heat.J_kgK': same('1 J / (1 kg K)'),
  'heat conductance.W_K': same('1 W / (1 K)'),
  'heat transfer coefficient.W_m2K': same('1 W / (1 m^2 K)'),
  'heating rate.K_s': same('1 K / (1 s)'),
  'heating rate.K_min': same('1 K / (1 minute)'),
  'decay rate.per_min': same('1 / (1 minute)'),
  'decay rate.per_s': same('1 / (1 s)'),
  'diffusivity.m2_s': same('1 m^2 / (1 s)'),
  'diffusivity.mm2_s': same('1 mm^2 / (1 s)'),
  'diffusivity.um2_s': same('1 um^2 / (1 s)'),
  'relative humidity.percent': both('1/100', 'percent'),
  'vapour density.g_m3': same('1 g / (1 m^3)'),
  'pressure.hPa': same('1 hPa'),
  'rotational speed.rpm': both('1 / (1 minute)', '1/minute'),
  'rotational speed.per_s': same('1 / (1 s)'),
  'curvature.mm_m2': same('1 mm / (1 m^2)'),
  'curvature.per_m': same('1 / (1 m)'),
  'energy per mole.kJ_mol': same('1 kJ'),
  'humidity ratio.g_kg': same('1 g / (1 kg)'),
};

/** SI base units of a kind, as both programs spell them. */
function baseUnits(kind: Kind): string {
  const parts = ['m', 'kg', 's', 'K', 'A'].flatMap((base, i) => {
    const exponent = kind.dimension[i] ?? 0;
    return exponent === 0 ? [] : [`${base}^${exponent}`];
  });
  return parts.join(' ') || '1';
}

function inSi(expression: string, kind: Kind): number {
  const found: unknown = math.evaluate(expression);
  if (typeof found === 'number') {
    expect(kind.dimension).toEqual([0, 0, 0, 0, 0]);
    return found;
  }
  const base = baseUnits(kind);
  return math.unit(String(found)).toNumber(base === '1' ? 'rad' : base);
}

const units = allKinds.flatMap((kind) => kind.units.map((unit) => [`${kind.id}.${unit.id}`, kind, unit] as const));

describe('factors of units to SI', () => {
  it('has an outside value for every unit and for no other', () => {
    expect(units.map(([name]) => name).sort()).toEqual(Object.keys(outside).sort());
  });

  it.each(units)('%s agrees with mathjs', (name, kind, unit) => {
    const found = inSi(outside[name]!.mathjs, kind);
    // mathjs keeps its own rounding, of a few parts in 10^16.
    expect(Math.abs(unit.factor / found - 1)).toBeLessThan(1e-14);
  });

  it.runIf(existsSync('/usr/bin/units')).each(units)('%s agrees with the units program', (name, kind, unit) => {
    const base = baseUnits(kind);
    const args = ['--terse', '--output-format', '%.17g', outside[name]!.program, base];
    const found = Number(execFileSync('/usr/bin/units', args, { encoding: 'utf8' }));
    expect(Math.abs(unit.factor / found - 1)).toBeLessThan(1e-14);
  });
});

describe('temperatures on a scale', () => {
  const { C, F, K } = kinds.temperature;
  it.each([-40, -17.5, 0, 20, 37, 100, 215, 660])('%s degrees agree with mathjs in both directions', (t) => {
    for (const [measure, name] of [
      [C, 'degC'],
      [F, 'degF'],
      [K, 'K'],
    ] as const) {
      // prettier-ignore
      expect(toSi(t, measure.unit)).toBeCloseTo(math.unit(t, name).toNumber('K'), 9);
      expect(fromSi(toSi(t, measure.unit), measure.unit)).toBeCloseTo(t, 9);
    }
  });

  it('knows the fixed points: −40 °F is −40 °C, 212 °F is 100 °C, 0 K is −273.15 °C (ITS-90 definition of the scale)', () => {
    expect(toSi(-40, F.unit)).toBeCloseTo(toSi(-40, C.unit), 10);
    expect(toSi(212, F.unit)).toBeCloseTo(373.15, 10);
    expect(fromSi(0, C.unit)).toBe(-273.15);
  });
});
