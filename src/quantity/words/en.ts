import type { EveryUnit, KindId } from '../all-kinds';

/** After exactly 1, and after any other number. */
export type Spoken = readonly [one: string, many: string];

const none: Spoken = ['', ''];
const percent: Spoken = ['per cent', 'per cent'];
const kelvin: Spoken = ['kelvin', 'kelvins'];
const same = (text: string): Spoken => [text, text];

/** Names of the kinds, as they stand in a sentence. */
const kinds: Readonly<Record<KindId, string>> = {
  count: 'count',
  money: 'money',
  ratio: 'ratio',
  angle: 'angle',
  slope: 'slope',
  length: 'length',
  area: 'area',
  volume: 'volume',
  'second moment of area': 'second moment of area',
  mass: 'mass',
  time: 'time',
  frequency: 'frequency',
  'shear rate': 'shear rate',
  'number per length': 'number per length',
  speed: 'speed',
  acceleration: 'acceleration',
  flow: 'flow',
  force: 'force',
  torque: 'torque',
  pressure: 'pressure',
  consistency: 'consistency',
  density: 'density',
  'mass per length': 'mass per length',
  stiffness: 'stiffness',
  temperature: 'temperature',
  'temperature difference': 'temperature difference',
  'thermal expansion': 'thermal expansion',
  power: 'power',
  voltage: 'voltage',
  current: 'current',
  resistance: 'resistance',
  energy: 'energy',
  'heat capacity': 'heat capacity',
  'specific heat': 'specific heat',
  'heat conductance': 'heat conductance',
  'heat transfer coefficient': 'heat transfer coefficient',
  'heating rate': 'heating rate',
  'decay rate': 'decay rate',
  diffusivity: 'diffusivity',
  'relative humidity': 'relative humidity',
  'vapour density': 'vapour density',
  'bending stiffness': 'bending stiffness',
  'rotational speed': 'rotational speed',
  curvature: 'curvature',
  'energy per mole': 'energy per mole',
  'humidity ratio': 'humidity ratio',
};

/** Units as they are said after a number. */
const units: EveryUnit<Spoken> = {
  count: { one: none },
  money: { one: none },
  ratio: { one: none, percent },
  angle: {
    deg: ['degree', 'degrees'],
    rad: ['radian', 'radians'],
    turn: ['turn', 'turns'],
    arcmin: ['minute of arc', 'minutes of arc'],
  },
  slope: {
    mm_m: ['millimetre a metre', 'millimetres a metre'],
    percent,
    in_ft: ['inch a foot', 'inches a foot'],
  },
  length: {
    mm: ['millimetre', 'millimetres'],
    um: ['micrometre', 'micrometres'],
    cm: ['centimetre', 'centimetres'],
    m: ['metre', 'metres'],
    in: ['inch', 'inches'],
    thou: ['thousandth of an inch', 'thousandths of an inch'],
    ft: ['foot', 'feet'],
  },
  area: { mm2: ['square millimetre', 'square millimetres'], in2: ['square inch', 'square inches'] },
  volume: { mm3: ['cubic millimetre', 'cubic millimetres'], cm3: ['cubic centimetre', 'cubic centimetres'] },
  'second moment of area': { mm4: ['millimetre to the fourth', 'millimetres to the fourth'] },
  mass: { g: ['gram', 'grams'], kg: ['kilogram', 'kilograms'], oz: ['ounce', 'ounces'], lb: ['pound', 'pounds'] },
  time: {
    s: ['second', 'seconds'],
    ms: ['millisecond', 'milliseconds'],
    min: ['minute', 'minutes'],
    h: ['hour', 'hours'],
  },
  frequency: { Hz: same('hertz'), kHz: same('kilohertz') },
  'shear rate': { per_s: same('per second') },
  'number per length': { per_mm: same('per millimetre'), per_in: same('per inch') },
  speed: {
    mm_s: ['millimetre a second', 'millimetres a second'],
    mm_min: ['millimetre a minute', 'millimetres a minute'],
    m_s: ['metre a second', 'metres a second'],
    in_s: ['inch a second', 'inches a second'],
  },
  acceleration: {
    mm_s2: ['millimetre per second squared', 'millimetres per second squared'],
    m_s2: ['metre per second squared', 'metres per second squared'],
  },
  flow: { mm3_s: ['cubic millimetre a second', 'cubic millimetres a second'] },
  force: {
    N: ['newton', 'newtons'],
    mN: ['millinewton', 'millinewtons'],
    kgf: ['kilogram-force', 'kilograms-force'],
    gf: ['gram-force', 'grams-force'],
    lbf: ['pound-force', 'pounds-force'],
    ozf: ['ounce-force', 'ounces-force'],
  },
  torque: {
    N_mm: ['newton millimetre', 'newton millimetres'],
    N_m: ['newton metre', 'newton metres'],
    lbf_in: ['pound-force inch', 'pound-force inches'],
    ozf_in: ['ounce-force inch', 'ounce-force inches'],
  },
  pressure: {
    MPa: ['megapascal', 'megapascals'],
    GPa: ['gigapascal', 'gigapascals'],
    kPa: ['kilopascal', 'kilopascals'],
    hPa: ['hectopascal', 'hectopascals'],
    Pa: ['pascal', 'pascals'],
    psi: ['pound-force per square inch', 'pounds-force per square inch'],
  },
  consistency: { Pa_sn: ['pascal second to the n', 'pascal seconds to the n'] },
  density: {
    g_cm3: ['gram per cubic centimetre', 'grams per cubic centimetre'],
    kg_m3: ['kilogram per cubic metre', 'kilograms per cubic metre'],
  },
  'mass per length': { g_m: ['gram a metre', 'grams a metre'], kg_m: ['kilogram a metre', 'kilograms a metre'] },
  stiffness: {
    N_mm: ['newton per millimetre', 'newtons per millimetre'],
    N_m: ['newton per metre', 'newtons per metre'],
    lbf_in: ['pound-force per inch', 'pounds-force per inch'],
  },
  temperature: {
    C: ['degree Celsius', 'degrees Celsius'],
    F: ['degree Fahrenheit', 'degrees Fahrenheit'],
    K: kelvin,
  },
  'temperature difference': { K: kelvin, F: ['degree Fahrenheit', 'degrees Fahrenheit'] },
  'thermal expansion': {
    um_mK: ['micrometre per metre and kelvin', 'micrometres per metre and kelvin'],
    per_K: same('per kelvin'),
  },
  power: { W: ['watt', 'watts'], mW: ['milliwatt', 'milliwatts'] },
  voltage: { V: ['volt', 'volts'], mV: ['millivolt', 'millivolts'] },
  current: { A: ['ampere', 'amperes'], mA: ['milliampere', 'milliamperes'] },
  resistance: { ohm: ['ohm', 'ohms'], kohm: ['kilohm', 'kilohms'], Mohm: ['megohm', 'megohms'] },
  energy: { kJ: ['kilojoule', 'kilojoules'], J: ['joule', 'joules'] },
  'heat capacity': { J_K: ['joule per kelvin', 'joules per kelvin'] },
  'specific heat': { J_kgK: ['joule per kilogram and kelvin', 'joules per kilogram and kelvin'] },
  'heat conductance': { W_K: ['watt per kelvin', 'watts per kelvin'] },
  'heat transfer coefficient': { W_m2K: ['watt per square metre and kelvin', 'watts per square metre and kelvin'] },
  'heating rate': { K_s: ['kelvin a second', 'kelvins a second'], K_min: ['kelvin a minute', 'kelvins a minute'] },
  'decay rate': { per_min: same('per minute'), per_s: same('per second') },
  diffusivity: {
    m2_s: ['square metre a second', 'square metres a second'],
    mm2_s: ['square millimetre a second', 'square millimetres a second'],
    um2_s: ['square micrometre a second', 'square micrometres a second'],
  },
  'relative humidity': { percent },
  'vapour density': { g_m3: ['gram per cubic metre', 'grams per cubic metre'] },
  'bending stiffness': {
    N_mm2: ['newton square millimetre', 'newton square millimetres'],
    N_m2: ['newton square metre', 'newton square metres'],
  },
  'rotational speed': { rpm: ['turn a minute', 'turns a minute'], per_s: ['turn a second', 'turns a second'] },
  curvature: {
    mm_m2: ['millimetre per square metre', 'millimetres per square metre'],
    per_m: same('per metre'),
  },
  'energy per mole': { kJ_mol: ['kilojoule a mole', 'kilojoules a mole'] },
  'humidity ratio': { g_kg: ['gram a kilogram', 'grams a kilogram'] },
};

/** Words of quantities: their kinds and units, numbers said aloud, and why what was typed was not understood. */
const en = {
  kinds,
  units,

  number: {
    /** 0 to 19. */
    small: [
      'zero',
      'one',
      'two',
      'three',
      'four',
      'five',
      'six',
      'seven',
      'eight',
      'nine',
      'ten',
      'eleven',
      'twelve',
      'thirteen',
      'fourteen',
      'fifteen',
      'sixteen',
      'seventeen',
      'eighteen',
      'nineteen',
    ],
    /** 20 to 99: `ten` from 2; `unit` empty for none. */
    tens: (ten: number, unit: string) => {
      const tens = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'][ten - 2] ?? '';
      return unit === '' ? tens : `${tens}-${unit}`;
    },
    /** `rest` is empty for none. */
    hundreds: (hundred: string, rest: string) =>
      rest === '' ? `${hundred} hundred` : `${hundred} hundred and ${rest}`,
    /** `few`: the rest is below a hundred. */
    thousands: (thousand: string, rest: string, few: boolean) =>
      rest === '' ? `${thousand} thousand` : `${thousand} thousand${few ? ' and' : ''} ${rest}`,
    million: 'one million',
    point: (whole: string, digits: string) => `${whole} point ${digits}`,
    minus: (number: string) => `minus ${number}`,
    power: (number: string, exponent: string) => `${number} times ten to the ${exponent}`,
  },
  withUnit: (number: string, unit: string) => `${number} ${unit}`,
  /** What was typed and not understood; `text` is what stands there. */
  typed: {
    noUnit: 'no unit',
    or: (most: string, last: string) => `${most} or ${last}`,
    noNumber: (text: string) => `“${text}” does not start with a number. Accepted: 0.4, 0,4, 1/32 or 3 1/2.`,
    twoMarks: (text: string) => `“${text}” has more than one decimal mark. Write thousands without a mark: 1000.5.`,
    ambiguous: (text: string, small: string, large: string) =>
      `“${text}” could mean ${small} or ${large}. Write it without the comma.`,
    ambiguousPoint: (text: string, small: string, large: string) =>
      `“${text}” could mean ${small} or ${large}. Write it without the point.`,
    noClock: (text: string) =>
      `“${text}” is not a time as a clock writes it. Accepted: 1:30 for minutes and seconds, 1:02:30 for hours too; at most 59 after each colon.`,
    whichClock: (text: string, first: string, second: string) =>
      `“${text}” could mean ${first} h ${second} min or ${first} min ${second} s. Write ${first}:${second} h or ${first}:${second} min.`,
    scaleOrDifference: (value: string, half: string, field: string, kelvin: string) =>
      `Is ${value} a temperature in ${field} or in ${kelvin}? Write ${value} ${field} ± ${half}, or ${value} ${kelvin} ± ${half}.`,
    byZero: (text: string) => `“${text}” divides by zero.`,
    nothing: 'Nothing entered yet.',
    oneHalf: 'Only one ± is understood: 0.40 ± 0.02.',
    otherUnit: (text: string, kind: string, accepted: string) =>
      `“${text}” is not a unit of ${kind}. Accepted: ${accepted}.`,
    afterHalf: (reason: string) => `After the ±: ${reason}`,
    otherHalfUnit: (text: string, kind: string, accepted: string) =>
      `After the ±: “${text}” is not a unit of ${kind}. Accepted: ${accepted} or %.`,
    negativeHalf: 'The half-width after ± cannot be negative.',
    tooLarge: 'That number is too large to work with.',
    halfTooLarge: 'That half-width is too large to work with.',
    notWhole: (number: string) => `A whole number is needed here; ${number} is not one.`,
  },
  plusMinus: (value: string, half: string) => `${value} plus or minus ${half}`,
};

export default en;
