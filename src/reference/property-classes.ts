import { cite } from './citation';
import say from './words/en';

const { works: work, places: place } = say;

/** What a marking on a screw’s head stands for. Stresses in MPa. */
export interface PropertyClass {
  readonly name: string;
  /** Stress under proof load; for stainless the 0.2 % proof stress, which has no proof load of its own. */
  readonly Sp: number;
  /** Least tensile strength. */
  readonly Rm: number;
  /** Shear strength over tensile strength. */
  readonly shear: number;
}

export const iso898 = cite(work.iso898, place.classes);
export const shearRatio = cite(work.vdi, place.shearRatio, true);

/** Weakest first. Stresses of the steel classes ISO 898-1, of A2-70 ISO 3506-1; shear ratios VDI 2230, from memory. */
export const propertyClasses: readonly PropertyClass[] = [
  { name: '4.6', Sp: 225, Rm: 400, shear: 0.7 },
  { name: 'A2-70', Sp: 450, Rm: 700, shear: 0.72 },
  { name: '8.8', Sp: 580, Rm: 800, shear: 0.65 },
  { name: '10.9', Sp: 830, Rm: 1040, shear: 0.62 },
  { name: '12.9', Sp: 970, Rm: 1220, shear: 0.6 },
];
