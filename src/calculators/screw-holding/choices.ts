import { placedChoice } from '../../engine/shared-places';
import { choice } from '../../engine/calculator';

/** Trapezoidal size by ISO 2902 designation; the crest clearance is that of ISO 2904 for its pitch (from memory). */
function trapezoidal(d: number, lead: number, pitch: number) {
  // 7e limits of Tr 10 × 2: d 9.82 to 10 mm, d2 8.739 to 8.929 mm. Half of the latter's way below 9 mm, both ways.
  return { set: { d: [d, 0.13], P: pitch, P_h: lead, a_c: pitch < 2 ? 0.15 : 0.25, alpha: 15 } } as const;
}

/** Outer diameter, lead and pitch of the trapezoidal screws that are made, mm: what a person can buy in place of the present one. */
export const MADE = [
  [8, 1.5, 1.5],
  [8, 2, 2],
  [8, 4, 2],
  [8, 8, 2],
  [10, 2, 2],
  [10, 3, 3],
  [10, 4, 2],
  [12, 3, 3],
  [12, 6, 3],
  [16, 4, 4],
] as const;

/** Sizes that bring all their dimensions. */
export const STANDARD = [
  'tr8x1.5', 'tr8x2', 'tr8x4', 'tr8x8', 'tr10x2', 'tr10x3', 'tr10x4', 'tr12x3', 'tr12x6', 'tr16x4', 'acme',
] as const; // prettier-ignore
/** Screws with sliding nuts. */
export const PLAIN = [...STANDARD, 'own'] as const;

export const choices = {
  screw: choice(
    {
      'tr8x1.5': trapezoidal(8, 1.5, 1.5),
      tr8x2: trapezoidal(8, 2, 2),
      tr8x4: trapezoidal(8, 4, 2),
      tr8x8: trapezoidal(8, 8, 2),
      tr10x2: trapezoidal(10, 2, 2),
      tr10x3: trapezoidal(10, 3, 3),
      tr10x4: trapezoidal(10, 4, 2),
      tr12x3: trapezoidal(12, 3, 3),
      tr12x6: trapezoidal(12, 6, 3),
      tr16x4: trapezoidal(16, 4, 4),
      // ASME B1.5 (from memory): 29°, clearance 0.005 in a side when finer than 10 threads per inch.
      acme: {
        set: { d: [9.525, 0.13], P: 2.1167, P_h: 2.1167, a_c: 0.127, alpha: 14.5 },
      },
      own: { set: { alpha: 15 } },
      ball: { set: { P_h: 4, d_k: [6.5, 0.5] } },
    },
    'tr8x8',
    {
      from: 'z.screw-thread',
    },
  ),
  // Static friction of threads. Metals: Shigley, table of threaded pairs; the range of the table is kept as half-width.
  pair: choice(
    {
      'bronze-greased': { set: { mu: [0.13, 0.04] } },
      'bronze-dry': { set: { mu: [0.19, 0.05] } },
      polyacetal: { set: { mu: [0.17, 0.07] } },
      filled: { set: { mu: [0.12, 0.05] } },
      steel: { set: { mu: [0.14, 0.04] } },
    },
    'bronze-greased',
    { from: 'z.nut', when: { screw: PLAIN } },
  ),
  screws: choice({ one: {}, two: {}, more: {} }, 'two', { from: 'z.screws' }),
  drive: placedChoice('z.drive', { belt: {}, motors: {} }, 'motors', {
    when: { screws: 'two' },
  }),
  side: choice({ left: {}, right: {} }, 'left', {
    when: { screws: 'two', drive: 'motors' },
  }),
  // End factors: Euler's, and the squared first roots of the bending beam.
  ends: placedChoice(
    'z.screw-ends',
    {
      pinned: { set: { K: 1, k_1: 9.8696 } },
      mixed: { set: { K: 0.7, k_1: 15.418 } },
      clamped: { set: { K: 0.5, k_1: 22.373 } },
      free: { set: { K: 2, k_1: 3.516 } },
    },
    'pinned',
  ),
  material: placedChoice(
    'z.screw-material',
    {
      steel: { set: { E: [206, 4], R_e: [400, 150] } },
      stainless: { set: { E: [196, 6], R_e: [400, 200] } },
    },
    'steel',
  ),
};
