import { cite } from './citation';
import say from './words/en';

const { works: work, places: place } = say;

export const hexNuts = cite(work.hexNuts, place.nutSizes, true);
export const thinNutProof = cite(work.nutProof, place.thinNuts, true);

/** A hexagon nut, mm: width across flats, height of the usual one and of the thin one. */
interface Nut {
  readonly flats: number;
  readonly height: number;
  readonly thin: number;
}

/**
 * By the thread's name: coarse and fine metric ones alike by their diameter. Greatest heights, so that a pocket takes each: ISO 4032 (style 1) and
 * ISO 4035 (thin); inch: machine screw nuts of ASME B18.2.2, which have no thin form. From memory.
 */
const nuts: Readonly<Record<string, Nut>> = {
  M2: { flats: 4, height: 1.6, thin: 1.2 },
  'M2.5': { flats: 5, height: 2, thin: 1.6 },
  M3: { flats: 5.5, height: 2.4, thin: 1.8 },
  M4: { flats: 7, height: 3.2, thin: 2.2 },
  M5: { flats: 8, height: 4.7, thin: 2.7 },
  M6: { flats: 10, height: 5.2, thin: 3.2 },
  M8: { flats: 13, height: 6.8, thin: 4 },
  '4-40': { flats: 6.35, height: 2.49, thin: 2.49 },
  '6-32': { flats: 7.94, height: 2.9, thin: 2.9 },
  '8-32': { flats: 8.73, height: 3.3, thin: 3.3 },
  '10-24': { flats: 9.53, height: 3.3, thin: 3.3 },
  '10-32': { flats: 9.53, height: 3.3, thin: 3.3 },
  '1/4-20': { flats: 11.11, height: 4.9, thin: 4.9 },
};

/** The nut of a thread, fine ones by their diameter: `M4×0.5` takes that of `M4`. */
export const nutFor = (thread: string): Nut | undefined => nuts[thread.split('×')[0] ?? ''];

/** A heat-set insert, mm: the hole it melts into, and its length. */
interface HeatInsert {
  readonly hole: number;
  readonly length: number;
}

/** Usual inserts of brass for plastics. Makes differ by a tenth or two: common practice, no source. */
const heatInserts: Readonly<Record<string, HeatInsert>> = {
  M2: { hole: 3.2, length: 4 },
  'M2.5': { hole: 4, length: 5.7 },
  M3: { hole: 4, length: 5.7 },
  M4: { hole: 5.6, length: 8.1 },
  M5: { hole: 6.4, length: 9.5 },
  M6: { hole: 8, length: 12.7 },
  M8: { hole: 9.7, length: 12.7 },
  '4-40': { hole: 4, length: 5.7 },
  '6-32': { hole: 4.8, length: 7.1 },
  '8-32': { hole: 5.6, length: 8.1 },
  '10-24': { hole: 6.4, length: 9.5 },
  '10-32': { hole: 6.4, length: 9.5 },
  '1/4-20': { hole: 8, length: 12.7 },
};

export const heatInsertFor = (thread: string): HeatInsert | undefined => heatInserts[thread.split('×')[0] ?? ''];
