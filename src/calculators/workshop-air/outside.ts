import type { OutsideProof } from '../../engine/outside';

/** Saturated air: what is saturated is what the tables print. */
const saturated = { U: '100 %', T_s: '10 °C', p: '1013.25 hPa' } as const;

const checks: readonly OutsideProof[] = [
  ...(
    [
      ['5 °C', 8.726, 5.425],
      ['25 °C', 31.697, 20.173],
      ['50 °C', 123.513, 86.863],
    ] as const
  ).map(([T, e_w, w]): OutsideProof => {
    return {
      source: 'ASHRAE Fundamentals 2017, ch. 1, tables 2 and 3, as in a public library’s tests',
      given: { ...saturated, T },
      // The WMO's constants lie 0.304 % below this table at 25 °C.
      expect: { e_w: [e_w, 0.0031 * e_w], e: [e_w, 0.0031 * e_w], w: [w, 0.01 * w] },
    };
  }),
  {
    source:
      'Ideal gases of 18.015 and 28.966 g/mol (IUPAC, from memory) at the vapour pressure by another formula, 50 °C',
    given: { ...saturated, T: '50 °C' },
    expect: {
      w: [
        () => (1000 * 18.015 * other(50)) / (28.966 * (1013.25 - other(50))),
        // Both vapour pressures are fits: 0.3 %.
        0.003 * 86,
      ],
    },
  },
  {
    source:
      'Magnus’s formula turned round by hand (WMO-No. 8, annex 4.B, from memory): 25 °C and 80 % have the dew point 21.309 °C',
    given: { T: '25 °C', U: '80 %', T_s: '22 °C', p: '1013.25 hPa' },
    expect: { T_d: [21.309, 0.02] },
  },
  {
    source:
      'DIN 4108-3, dew points of humid air: 22 °C and 50 % 11.1 °C; a surface of 15.1 °C is 4 K above (from memory)',
    given: { T: '22 °C', U: '50 %', T_s: '15.1 °C', m_d: '2 K', p: '1013.25 hPa' },
    expect: { T_d: [11.1, 0.05], dT_d: [4, 0.05], T_o: [13.1, 0.05] },
  },
  {
    source:
      'Vapour pressures by another formula, 6.116441 · 10^(7.591386 t / (t + 240.7263)) hPa, maximum error 0.083 % from −20 to 50 °C',
    given: { T: '20 °C', U: '50 %', T_s: '12 °C', p: '1013.25 hPa' },
    expect: {
      e_w: [() => other(20), 0.07],
      e: [() => other(20) / 2, 0.035],
      gamma: [() => Math.log(other(20) / 2 / other(0)), 0.003],
      e_s: [() => other(12), 0.045],
      U_s: [() => (100 * other(20)) / 2 / other(12), 0.1],
    },
  },
  ...(
    [
      ['20 °C', 17.3],
      ['25 °C', 23],
      ['30 °C', 30.4],
      ['40 °C', 51.1],
    ] as const
  ).map(([T, rho_v]): OutsideProof => {
    return {
      source:
        'Saturated air by the CRC Handbook of Chemistry and Physics, 90th edition (2009), from memory: 17.3, 23.0, 30.4, 51.1 g/m³ at 20, 25, 30, 40 °C',
      given: { ...saturated, T },
      expect: { rho_v: [rho_v, 0.005 * rho_v] },
    };
  }),
  {
    source: 'Vapour pressures by another formula (maximum error 0.083 % to 50 °C): 22 °C and 50 % warmed to 45 °C',
    given: { T: '22 °C', U: '50 %', T_b: '45 °C', U_lim: '11.06 %', p: '1013.25 hPa' },
    choices: { ask: 'box' },
    expect: {
      e_w: [() => other(22), 0.08],
      e_b: [() => other(45), 0.25],
      U_b: [() => (100 * other(22)) / 2 / other(45), 0.05],
      gamma_b: [() => Math.log(other(22) / 2 / 0.1106 / other(0)), 0.003],
      T_o: [() => otherTemperature(other(22) / 2 / 0.1106), 0.1],
    },
  },
  {
    source:
      'Machinery’s Handbook: 200 mm of aluminium, 23.1 µm/(m·K), 40 K: 0.185 mm; of steel, 12: 0.096 mm (from memory)',
    given: {
      T_1: '20 °C',
      T_2: '60 °C',
      l_s: '200 mm',
      l_f: '200 mm',
      alpha_s: '12 µm/(m·K)',
      alpha_f: '23.1 µm/(m·K)',
      alpha_r: '55 µm/(m·K)',
      h_1: '0.2 mm',
    },
    choices: { ask: 'swing' },
    expect: { dT: [40, 1e-9], dl_s: [0.096, 0.0005], dl_f: [0.185, 0.0005], dg: [-0.0888, 0.001] },
  },
  {
    source: 'Common practice, no source: a quarter of a first layer of 0.2 mm',
    given: { T_1: '20 °C', T_2: '30 °C', h_1: '0.2 mm' },
    choices: { ask: 'swing' },
    expect: { dg_lim: [0.05, 1e-12] },
  },
  ...(
    [
      [-10, 2.599],
      [-20, 1.033],
    ] as const
  ).map(([frost, e]): OutsideProof => ({
    source: 'IAPWS, pressure of sublimation: 259.9 Pa at −10 °C, 103.3 Pa at −20 °C (from memory); air of 5 °C',
    given: { T: '5 °C', U: `${(100 * e) / other(5)} %`, T_s: '-5 °C', p: '1013.25 hPa', m_d: '2 K' },
    expect: {
      T_i: [frost, 0.06],
      T_k: [frost, 0.06],
      T_d: [() => otherTemperature(e), 0.1],
      dT_d: [-5 - frost, 0.06],
      T_o: [frost + 2, 0.06],
    },
  })),
  {
    source: 'The Fahrenheit scale: 140 °F less 9 °F is 131 °F',
    given: { T: '22 °C', U: '50 %', T_b: '45 °C', T_g: '140 °F', m_T: '9 °F', p: '1013.25 hPa' },
    choices: { ask: 'box' },
    expect: { T_max: [((131 - 32) * 5) / 9, 1e-9] },
  },
  ...(['nozzle-foot', 'nozzle-head', 'bed-foot', 'bed-head'] as const).map((lift): OutsideProof => {
    return {
      source: 'Heights of every joint added up at both temperatures, with the gap left over between nozzle and bed',
      given: {
        T_1: '10 °C',
        T_2: '30 °C',
        l_s: '310 mm',
        l_f: '250 mm',
        alpha_s: '17.3 µm/(m·K)',
        alpha_f: '23.1 µm/(m·K)',
        alpha_r: '74 µm/(m·K)',
        h_1: '0.2 mm',
      },
      choices: { ask: 'swing', lift },
      expect: {
        dl_r: [() => 60 * (stretch(74) - 1), 1e-9],
        dg: [() => gapAt(lift, stretch) - gapAt(lift, () => 1), 1e-9],
      },
    };
  }),
  {
    source: 'Heights of every joint added up at both temperatures, zero at a switch on the frame',
    given: {
      T_1: '10 °C',
      T_2: '30 °C',
      l_f: '120 mm',
      alpha_f: '23.1 µm/(m·K)',
      alpha_r: '74 µm/(m·K)',
      h_1: '0.2 mm',
    },
    choices: { ask: 'swing', zero: 'switch' },
    expect: {
      dl_f: [() => 120 * (stretch(23.1) - 1), 1e-9],
      dl_r: [() => 120 * (stretch(74) - 1), 1e-9],
      // The switch's height less the bed's posts of 70 mm and the carriage's 50 mm below the switch.
      dg: [() => 120 * stretch(23.1) - 70 * stretch(74) - 50 * stretch(74), 1e-9],
    },
  },
];
export default checks;

/** Saturation pressure by the other formula, hPa at °C. */
function other(t: number): number {
  return 6.116441 * 10 ** ((7.591386 * t) / (t + 240.7263));
}

/** The same solved for the temperature, °C. */
function otherTemperature(e: number): number {
  return 240.7263 / (7.591386 / Math.log10(e / 6.116441) - 1);
}

/** How much longer 20 K make a length. */
function stretch(perMillion: number): number {
  return 1 + perMillion * 1e-6 * 20;
}

/**
 * The gap in mm: where the nozzle stands less where the bed stands. Screw of 310 mm, upright of 250 mm; what carries the
 * nozzle and the bed fills up the rest so that they meet when cold, 45 mm of it at the nozzle.
 */
function gapAt(lift: string, grown: (perMillion: number) => number): number {
  const up = lift.endsWith('foot') ? 1 : -1;
  const screw = up * 310 * grown(17.3);
  const upright = up * 250 * grown(23.1);
  const nozzleEnd = lift.startsWith('nozzle') ? screw : upright;
  const bedEnd = lift.startsWith('nozzle') ? upright : screw;
  const cold = up * 60 * (lift.startsWith('nozzle') ? 1 : -1);
  // The nozzle hangs 45 mm below its mount; the bed's posts fill what is left.
  const posts = cold - 45;
  return nozzleEnd - 45 * grown(74) - (bedEnd + posts * grown(74));
}
