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
  /** Letters on its back where a standard gives it some, pitch, teeth, make: short enough for a key. */
  readonly label: string;
  /** Tooth pitch, mm. */
  readonly pitch: Tabulated;
  /** Mass per metre, g/m. */
  readonly mass: Tabulated;
  /** Least tension of one strand that seats the teeth, N. */
  readonly least: Tabulated;
  /** Allowable working tension of one strand, N. */
  readonly allowable: Tabulated;
  /** Specific spring rate C, N: a strand of length l has the stiffness C / l. */
  readonly springRate: Tabulated;
  /** Bending stiffness E·I over its flat side, N·mm². */
  readonly bending: Tabulated;
}

/** Width that the values of every row stand for, mm. */
export const TABLE_WIDTH = 10;

const of = (value: number, half: number, from: Citation): Tabulated => ({ value, half, from });

const inch = cite(work.iso5296, place.pitchCodes);
const metric = cite(work.iso17396, place.profiles);
const byName = derived(say.belts.byName);

/** What the labels mean, for a hint. */
export const BELT_LABELS = say.belts.hint;

/** Half-widths as far as the trade differs: of tensions a fifth and a seventh, of stiff cords less than of soft ones. */
const row = (
  label: string,
  pitch: Tabulated,
  by: Readonly<Record<Exclude<keyof Belt, 'label' | 'pitch'>, readonly [value: number, half: number]>>,
): Belt => {
  const usual = ([value, half]: readonly [number, number]): Tabulated => of(value, half, commonPractice);
  return {
    label,
    pitch,
    mass: usual(by.mass),
    least: usual(by.least),
    allowable: usual(by.allowable),
    springRate: usual(by.springRate),
    bending: usual(by.bending),
  };
};
const { labels } = say.belts;

export const belts = {
  curved2: row(labels.curved2, of(2, 0, byName), {
    mass: [13, 2],
    least: [15, 3],
    allowable: [43.8, 6],
    springRate: [31000, 9300],
    bending: [10, 6],
  }),
  curved3: row(labels.curved3, of(3, 0, byName), {
    mass: [25, 4],
    least: [16.3, 3.2],
    allowable: [112, 16],
    springRate: [49000, 14700],
    bending: [35, 22],
  }),
  curved5: row(labels.curved5, of(5, 0, byName), {
    mass: [36, 6],
    least: [31, 6],
    allowable: [179, 25],
    springRate: [150000, 45000],
    bending: [150, 95],
  }),
  inch2: row(labels.inch2, of(2.032, 0, inch), {
    mass: [11, 2],
    least: [16, 3.2],
    allowable: [31.5, 4.5],
    springRate: [40000, 12000],
    bending: [10, 6],
  }),
  inch5: row(labels.inch5, of(5.08, 0, inch), {
    mass: [24, 1],
    least: [30, 6],
    allowable: [283, 40],
    springRate: [71000, 7100],
    bending: [90, 55],
  }),
  straight25: row(labels.straight25, of(2.5, 0, metric), {
    mass: [11, 1],
    least: [16, 3.2],
    allowable: [240, 34],
    springRate: [60000, 6000],
    bending: [20, 13],
  }),
  straight5: row(labels.straight5, of(5, 0, metric), {
    mass: [21, 1],
    least: [30, 6],
    allowable: [360, 50],
    springRate: [90000, 9000],
    bending: [90, 55],
  }),
  wide5: row(labels.wide5, of(5, 0, metric), {
    mass: [34, 3],
    least: [30, 6],
    allowable: [560, 80],
    springRate: [140000, 14000],
    bending: [150, 95],
  }),
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

/** Where the pitches behind the options come from; all else in the rows is common practice. */
export const pitchSource = cite(work.pitches, place.pitches);

/** Mass, tensions, spring rate and bending stiffness grow with the number of cords side by side. */
export const byWidth = derived(say.belts.byWidth);
