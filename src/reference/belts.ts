import { cite, commonPractice, derived, type Citation } from './citation';

/** One number of a table: the value, how far the truth may lie from it, and where it comes from. */
export interface Tabulated {
  readonly value: number;
  readonly half: number;
  readonly from: Citation;
}

/** A sort of toothed belt. Values that go with the width are those of a belt `TABLE_WIDTH` wide. */
export interface Belt {
  /** Pitch, teeth, make: short enough for a key. */
  readonly label: string;
  /** Tooth pitch, mm. */
  readonly pitch: Tabulated;
  /** Height over the teeth, mm. */
  readonly height: Tabulated;
  /** Mass per metre, g/m. */
  readonly mass: Tabulated;
  /** Least tension of one strand that seats the teeth, N. */
  readonly least: Tabulated;
  /** Allowable working tension of one strand, N. */
  readonly allowable: Tabulated;
  /** Specific spring rate C, N: a strand of length l has the stiffness C / l. */
  readonly springRate: Tabulated;
}

/** Width that the values of every row stand for, mm. */
export const TABLE_WIDTH = 10;

const of = (value: number, half: number, from: Citation): Tabulated => ({ value, half, from });

const curvilinear = cite(
  'ISO 13050, metric curvilinear synchronous belts',
  'pitch; the 2 mm pitch may be outside it',
  true,
);
const inch = cite('ISO 5296, synchronous belts of inch pitch', 'pitch: 0.08 in and 0.2 in', true);
const metric = cite('DIN 7721, now ISO 17396, metric trapezoidal belts', 'pitch', true);

const handbookSize = cite('Supplier’s engineering table', 'belt height', true);
const foundSize = cite('Supplier’s engineering table', 'belt height over the teeth');
const rememberedMass = cite(
  'Suppliers’ engineering tables',
  'mass per metre and millimetre of width; they differ',
  true,
);
const inchMass = cite('ISO 5295, an early edition’s table', 'mass of 6.4 mm width: 0.007 kg/m', true);
const working = cite(
  'Supplier’s engineering table',
  'allowable working tension per inch of width, rubber and glass cord: 25, 64 and 102 lbf for 2, 3 and 5 mm curved, 18 lbf for 2.032 mm',
  true,
);
const seating = cite('Supplier’s engineering table', 'minimum installation tension of a strand', true);
const pressing = cite(
  'Supplier’s engineering table',
  'constant Y of the force at a deflection of 1/64 of the span, C = 2048 · Y',
  true,
);
const steelCord = cite('Supplier’s engineering table, polyurethane belts with steel cord', 'open-ended, by width');

/** What the labels mean, for a hint. */
export const BELT_LABELS =
  'Pitch and teeth; rubber with glass cord, or polyurethane with steel cord. For another, enter its values below.';

/** Half-widths: of a mass as far as tables of one sort differ; of spring rates 30 % (glass) and 10 % (steel). */
export const belts = {
  curved2: {
    label: '2 mm curved, rubber',
    pitch: of(2, 0, curvilinear),
    height: of(1.45, 0.1, handbookSize),
    mass: of(13, 2, rememberedMass),
    least: of(15, 0, commonPractice),
    allowable: of(43.8, 0, working),
    springRate: of(31000, 9300, pressing),
  },
  curved3: {
    label: '3 mm curved, rubber',
    pitch: of(3, 0, curvilinear),
    height: of(2.4, 0.1, handbookSize),
    mass: of(25, 4, rememberedMass),
    least: of(16.3, 0, seating),
    allowable: of(112, 0, working),
    springRate: of(49000, 14700, pressing),
  },
  curved5: {
    label: '5 mm curved, rubber',
    pitch: of(5, 0, curvilinear),
    height: of(3.6, 0.2, foundSize),
    mass: of(36, 6, rememberedMass),
    least: of(31, 0, seating),
    allowable: of(179, 0, working),
    springRate: of(150000, 45000, pressing),
  },
  inch2: {
    label: '2.032 mm straight, rubber',
    pitch: of(2.032, 0, inch),
    height: of(1.14, 0.1, foundSize),
    mass: of(11, 2, inchMass),
    least: of(16, 0, seating),
    allowable: of(31.5, 0, working),
    springRate: of(40000, 12000, pressing),
  },
  inch5: {
    label: '5.08 mm straight, steel cord',
    pitch: of(5.08, 0, inch),
    height: of(2.3, 0.1, foundSize),
    mass: of(24, 1, steelCord),
    least: of(30, 0, commonPractice),
    allowable: of(283, 0, steelCord),
    springRate: of(71000, 7100, steelCord),
  },
  straight25: {
    label: '2.5 mm straight, steel cord',
    pitch: of(2.5, 0, metric),
    height: of(1.3, 0.1, handbookSize),
    mass: of(11, 1, steelCord),
    least: of(16, 0, commonPractice),
    allowable: of(240, 0, steelCord),
    springRate: of(60000, 6000, steelCord),
  },
  straight5: {
    label: '5 mm straight, steel cord',
    pitch: of(5, 0, metric),
    height: of(2.2, 0.1, handbookSize),
    mass: of(21, 1, steelCord),
    least: of(30, 0, commonPractice),
    allowable: of(360, 0, steelCord),
    springRate: of(90000, 9000, steelCord),
  },
  wide5: {
    label: '5 mm broad straight, steel cord',
    pitch: of(5, 0, metric),
    height: of(2.7, 0.1, handbookSize),
    mass: of(34, 3, steelCord),
    least: of(30, 0, commonPractice),
    allowable: of(560, 0, steelCord),
    springRate: of(140000, 14000, steelCord),
  },
} as const satisfies Readonly<Record<string, Belt>>;

type BeltId = keyof typeof belts;
type Column = Exclude<keyof Belt, 'label'>;

interface Option {
  readonly label: string;
  readonly set?: Readonly<Record<string, readonly [number, number]>>;
}

/**
 * Options of a choice of belt: each brings the row's values, in the units of the table, to the inputs named; the last,
 * `other`, brings none.
 *
 * @param symbols name of the input that takes each column
 */
export function beltOptions(symbols: Readonly<Partial<Record<Column, string>>>): Record<BeltId | 'other', Option> {
  const columns = Object.entries(symbols) as [Column, string][];
  const rows = Object.entries<Belt>(belts).map(([id, row]) => {
    const set = Object.fromEntries(
      columns.map(([column, symbol]) => [symbol, [row[column].value, row[column].half] as const]),
    );
    return [id, { label: row.label, set }] as const;
  });
  return { ...(Object.fromEntries(rows) as Record<BeltId, Option>), other: { label: 'another' } };
}

const RUBBER = 'rubber and glass cord';
const STEEL = 'polyurethane and steel cord';

/** Where the values behind the options come from: one line for each column, since an option has no source of its own. */
export const beltSources = {
  pitch: cite('ISO 13050 (curved), ISO 5296 (inch), DIN 7721 / ISO 17396 (metric, straight)', 'pitch', true),
  height: cite('Suppliers’ engineering tables', 'belt height over the teeth, 2 and 3 mm curved from memory', true),
  mass: cite(
    'Suppliers’ engineering tables',
    `${STEEL}: read by width; ${RUBBER}: from memory, tables differ, weigh a known length`,
    true,
  ),
  least: cite(
    'Supplier’s engineering table, minimum installation tension',
    `${RUBBER}: from memory, 2 mm common practice; ${STEEL}: common practice, no source`,
    true,
  ),
  allowable: cite(
    'Suppliers’ engineering tables, allowable working tension',
    `${STEEL}: read by width; ${RUBBER}: from memory`,
    true,
  ),
  springRate: cite(
    'Suppliers’ engineering tables, specific spring rate',
    `${STEEL}: read by width; ${RUBBER}: from the deflection constant Y, from memory`,
    true,
  ),
} as const satisfies Readonly<Record<Column, Citation>>;

/** Mass, least and allowable tension and spring rate grow with the number of cords side by side. */
export const byWidth = derived('in proportion to the width, as the rows of suppliers’ tables are');
