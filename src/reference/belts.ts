import { cite, commonPractice, derived, type Citation } from './citation';
import say from './words/en';

const { works: work, places: place } = say;

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

const curvilinear = cite(work.iso13050, place.curvilinear, true);
const inch = cite(work.iso5296, place.inch, true);
const metric = cite(work.iso17396, place.pitch, true);

const handbookSize = cite(work.supplier, place.height, true);
const foundSize = cite(work.supplier, place.heightOverTeeth);
const rememberedMass = cite(work.suppliers, place.massPerWidth, true);
const inchMass = cite(work.iso5295, place.inchMass, true);
const working = cite(work.supplier, place.working, true);
const seating = cite(work.supplier, place.seating, true);
const pressing = cite(work.supplier, place.pressing, true);
const steelCord = cite(work.steelCord, place.openEnded);

/** What the labels mean, for a hint. */
export const BELT_LABELS = say.belts.hint;

/** Half-widths: of a mass as far as tables of one sort differ; of spring rates 30 % (glass) and 10 % (steel). */
export const belts = {
  curved2: {
    label: say.belts.labels.curved2,
    pitch: of(2, 0, curvilinear),
    height: of(1.45, 0.1, handbookSize),
    mass: of(13, 2, rememberedMass),
    least: of(15, 0, commonPractice),
    allowable: of(43.8, 0, working),
    springRate: of(31000, 9300, pressing),
  },
  curved3: {
    label: say.belts.labels.curved3,
    pitch: of(3, 0, curvilinear),
    height: of(2.4, 0.1, handbookSize),
    mass: of(25, 4, rememberedMass),
    least: of(16.3, 0, seating),
    allowable: of(112, 0, working),
    springRate: of(49000, 14700, pressing),
  },
  curved5: {
    label: say.belts.labels.curved5,
    pitch: of(5, 0, curvilinear),
    height: of(3.6, 0.2, foundSize),
    mass: of(36, 6, rememberedMass),
    least: of(31, 0, seating),
    allowable: of(179, 0, working),
    springRate: of(150000, 45000, pressing),
  },
  inch2: {
    label: say.belts.labels.inch2,
    pitch: of(2.032, 0, inch),
    height: of(1.14, 0.1, foundSize),
    mass: of(11, 2, inchMass),
    least: of(16, 0, seating),
    allowable: of(31.5, 0, working),
    springRate: of(40000, 12000, pressing),
  },
  inch5: {
    label: say.belts.labels.inch5,
    pitch: of(5.08, 0, inch),
    height: of(2.3, 0.1, foundSize),
    mass: of(24, 1, steelCord),
    least: of(30, 0, commonPractice),
    allowable: of(283, 0, steelCord),
    springRate: of(71000, 7100, steelCord),
  },
  straight25: {
    label: say.belts.labels.straight25,
    pitch: of(2.5, 0, metric),
    height: of(1.3, 0.1, handbookSize),
    mass: of(11, 1, steelCord),
    least: of(16, 0, commonPractice),
    allowable: of(240, 0, steelCord),
    springRate: of(60000, 6000, steelCord),
  },
  straight5: {
    label: say.belts.labels.straight5,
    pitch: of(5, 0, metric),
    height: of(2.2, 0.1, handbookSize),
    mass: of(21, 1, steelCord),
    least: of(30, 0, commonPractice),
    allowable: of(360, 0, steelCord),
    springRate: of(90000, 9000, steelCord),
  },
  wide5: {
    label: say.belts.labels.wide5,
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
  return { ...(Object.fromEntries(rows) as Record<BeltId, Option>), other: { label: say.belts.labels.other } };
}

/** Where the values behind the options come from: one line for each column, since an option has no source of its own. */
export const beltSources = {
  pitch: cite(work.pitches, place.pitch, true),
  height: cite(work.suppliers, place.heights, true),
  mass: cite(work.suppliers, place.masses, true),
  least: cite(work.least, place.least, true),
  allowable: cite(work.allowable, place.allowable, true),
  springRate: cite(work.springRate, place.springRate, true),
} as const satisfies Readonly<Record<Column, Citation>>;

/** Mass, least and allowable tension and spring rate grow with the number of cords side by side. */
export const byWidth = derived(say.belts.byWidth);
