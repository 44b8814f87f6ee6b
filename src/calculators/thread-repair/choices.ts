import { clearanceHole, tapDrill, unifiedHoles, washerOutside } from '../../reference/drills';
import { insertDrill } from '../../reference/inserts';
import { materials, type Property } from '../../reference/materials';
import { heatInsertFor, nutFor } from '../../reference/nuts';
import { propertyClasses } from '../../reference/property-classes';
import {
  coarseThreads,
  fineThreads,
  looseLimits,
  nextLarger,
  nextLargerInch,
  unifiedThreads,
  type MetricThread,
} from '../../reference/threads';
import { choice } from '../../engine/calculator';
import type { OptionData } from '../../engine/spec';

/** Threads whose next larger is listed too. */
const metric = [...coarseThreads.slice(0, -1), ...fineThreads];
const inch = unifiedThreads.filter(({ d }) => nextLargerInch(d) !== undefined);
export const METRIC = metric.map(({ name }) => name);
export const INCH = inch.map(({ name }) => name);

/** The thread that a stripped hole of this one is opened to, by name. */
export const nextOf = (name: string): MetricThread | undefined => {
  const own = [...metric, ...inch].find((thread) => thread.name === name);
  return own && (INCH.includes(name) ? nextLargerInch(own.d) : nextLarger(own.d));
};

const round = (mm: number): number => Number(mm.toFixed(4));

/** What the tables give for a screw and for the next larger coarse one, in mm. */
function sizeOption(thread: MetricThread): OptionData & { readonly label: string } {
  const next = nextOf(thread.name);
  const drill = insertDrill[thread.name];
  const holes = unifiedHoles[thread.name];
  const clearance = holes?.clearance ?? clearanceHole[thread.d]?.[1];
  const washer = holes?.washer ?? washerOutside[thread.d];
  const nextDrill = next && tapDrill[next.name];
  const [nut, heat] = [nutFor(thread.name), heatInsertFor(thread.name)];
  if (!next || !drill || !clearance || !washer || !nextDrill || !nut || !heat)
    throw new Error(`${thread.name} lacks a table value`);
  const own = looseLimits(thread);
  const larger = looseLimits(next);
  return {
    label: thread.name,
    set: {
      d: round(thread.d),
      P: round(thread.P),
      D_s: own.Ds,
      E_s: own.Es,
      E_n: own.En,
      K_n: own.Kn,
      d_n: round(next.d),
      P_n: round(next.P),
      D_sn: larger.Ds,
      E_sn: larger.Es,
      E_nn: larger.En,
      K_nn: larger.Kn,
      D_h: [heat.hole, 0.2],
      L_s: heat.length,
      s_w: nut.flats,
      m_w: nut.height,
      m_t: nut.thin,
      D_d: drill,
      D_t: nextDrill,
      D_c: clearance,
      d_w: washer,
    },
  };
}

const both = ({ value, half }: Property): readonly [number, number] => [value, half];

interface Solid {
  readonly shear: Property;
  readonly yield: Property;
}

/** Wall and strength wanted are common practice; the wall in metal follows from the dilation factor of VDI 2230. */
const metal = (part: Solid): OptionData => ({
  set: { tau: both(part.shear), p_y: both(part.yield), k_w: 0.45, s_min: 100, k_m: 1.35 },
});
const moulded = (part: Solid): OptionData => ({
  set: { tau: both(part.shear), p_y: both(part.yield), k_w: 0.75, s_min: 15, k_m: 3 },
});
/** Common practice: across its layers a print has about half the strength of the solid, give or take a third. */
const printed = (part: Solid): OptionData => ({
  set: {
    tau: [part.shear.value / 2, part.shear.value / 6],
    p_y: [part.yield.value / 2, part.yield.value / 6],
    k_w: 0.75,
    s_min: 15,
    k_m: 3,
  },
});

/** What the table gives for a class. @throws Error where it lacks the class */
function grade(marking: string): OptionData {
  const found = propertyClasses.find(({ name }) => name === marking);
  if (!found) throw new Error(`${marking} is no class of the table`);
  return { set: { S_p: found.Sp, R_m: found.Rm, q_s: found.shear } };
}

/** Parts of plastic, which take a heat-set insert or a nut in a pocket. */
export const PLASTICS = [
  'print-pla', 'print-petg', 'print-abs', 'print-pa', 'print-pc', 'abs', 'pa', 'pc', 'pom',
] as const; // prettier-ignore

/** By the names of the classes and threads, for looking them up again. */
export const choices = {
  size: choice(Object.fromEntries([...metric, ...inch].map((thread) => [thread.name, sizeOption(thread)])), 'M3'),
  grade: choice(
    {
      '4.6': grade('4.6'),
      'A2-70': grade('A2-70'),
      '8.8': grade('8.8'),
      '10.9': grade('10.9'),
      '12.9': grade('12.9'),
    },
    '8.8',
  ),
  part: choice(
    {
      'al-6063': metal(materials['al-6063']),
      'al-6061': metal(materials['al-6061']),
      'al-cast': metal(materials['al-cast']),
      steel: metal(materials.steel),
      stainless: metal(materials.stainless),
      brass: metal(materials.brass),
      copper: metal(materials.copper),
      'print-pla': printed(materials.pla),
      'print-petg': printed(materials.petg),
      'print-abs': printed(materials.abs),
      'print-pa': printed(materials.pa66),
      'print-pc': printed(materials.pc),
      abs: moulded(materials.abs),
      pa: moulded(materials.pa66),
      pc: moulded(materials.pc),
      pom: moulded(materials.pom),
    },
    'al-6063',
  ),
  hole: choice(
    {
      reached: {},
      shut: {},
      blind: {},
    },
    'blind',
  ),
  insert: choice(
    {
      '1d': { set: { k_i: 1 } },
      '1.5d': { set: { k_i: 1.5 } },
      '2d': { set: { k_i: 2 } },
      '2.5d': { set: { k_i: 2.5 } },
      '3d': { set: { k_i: 3 } },
    },
    '1.5d',
  ),
  nut: choice({ usual: {}, thin: {} }, 'usual', { when: { part: PLASTICS } }),
  way: choice(
    {
      advised: {},
      longer: {},
      insert: {},
      next: {},
      bolt: {},
      heatset: {},
      nut: {},
      replace: {},
    },
    'advised',
  ),
};
