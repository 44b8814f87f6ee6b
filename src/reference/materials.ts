import { cite, commonPractice, type Citation } from './citation';
import say from './words/en';

const { works: work, places: place } = say;

/** One number of a table: value, how far the truth may lie from it, and where it comes from. */
export interface Property {
  readonly value: number;
  readonly half: number;
  readonly from: Citation;
}

/** A material as parts of a machine or of its prints are made of. Every number is for about 20 °C unless said. */
export interface Material {
  readonly name: string;
  readonly family: 'metal' | 'glass' | 'polymer';
  /** Young’s modulus, GPa. */
  readonly E: Property;
  /** Density, kg/m³. */
  readonly density: Property;
  /** Specific heat, J/(kg·K). */
  readonly heat: Property;
  /** Thermal conductivity, W/(m·K). */
  readonly conductivity: Property;
  /** Linear expansion, 10⁻⁶/K. */
  readonly expansion: Property;
  /** Where a polymer or glass goes soft, °C: glass transition of an amorphous one. */
  readonly softens?: Property;
  /** Where melting begins, °C: solidus of an alloy. */
  readonly melts?: Property;
  /** Ultimate shear strength of the solid, MPa. */
  readonly shear?: Property;
  /** Yield stress, MPa. */
  readonly yield?: Property;
}

const memory = (work: string, place: string): Citation => cite(work, place, true);
const HANDBOOK = memory('Machinery’s Handbook, 29th edition (2012)', place.handbook);
const METALS = memory('ASM Metals Handbook, Desk Edition (1998)', place.alloys);
/** Typical values of the Aluminum Association. */
const AA = memory('Aluminum Association, Aluminum Standards and Data (2009)', place.aluminium);
const FIXED_POINT = memory('ITS-90 (1990)', place.fixedPoints);
const EXPANSION = memory('Machinery’s Handbook, 29th edition (2012)', place.expansion);
const VDI = memory(work.vdi, place.shear);
const CRAWFORD = cite('Crawford, Plastics Engineering, 3rd edition (1998)', place.table18);
const MOULDED = memory('Engineering Plastics Handbook (2006)', place.moulded);
const PLA_PAPER = memory(
  'Physical and mechanical properties of PLA, Advanced Drug Delivery Reviews 107 (2016) 367–392',
  place.polylactic,
);
const GLASS = memory('Kaye and Laby, Tables of Physical and Chemical Constants, 16th edition (1995)', place.glasses);

const p = (value: number, half: number, from: Citation): Property => ({ value, half, from });

export const materials = {
  'al-6063': {
    name: say.materials['al-6063'],
    family: 'metal',
    E: p(68.9, 1, AA),
    density: p(2700, 20, AA),
    heat: p(900, 15, AA),
    conductivity: p(209, 10, AA),
    expansion: p(23.4, 0.5, AA),
    melts: p(616, 5, AA),
    shear: p(117, 12, AA),
    yield: p(145, 15, AA),
  },
  'al-6061': {
    name: say.materials['al-6061'],
    family: 'metal',
    E: p(68.9, 1, METALS),
    density: p(2700, 20, METALS),
    heat: p(896, 15, METALS),
    conductivity: p(167, 10, METALS),
    expansion: p(23.6, 0.5, METALS),
    melts: p(582, 5, METALS),
    shear: p(207, 20, METALS),
    yield: p(276, 25, METALS),
  },
  'al-cast': {
    name: say.materials['al-cast'],
    family: 'metal',
    E: p(70, 2, METALS),
    density: p(2660, 20, METALS),
    heat: p(900, 20, METALS),
    conductivity: p(117, 10, METALS),
    expansion: p(23.8, 0.5, METALS),
    melts: p(580, 10, METALS),
    shear: p(160, 30, METALS),
    yield: p(125, 20, METALS),
  },
  'al-pure': {
    name: say.materials['al-pure'],
    family: 'metal',
    E: p(69, 1, HANDBOOK),
    density: p(2700, 10, HANDBOOK),
    heat: p(897, 10, HANDBOOK),
    conductivity: p(237, 5, HANDBOOK),
    expansion: p(23.1, 0.3, EXPANSION),
    melts: p(660.3, 0.1, FIXED_POINT),
  },
  steel: {
    name: say.materials.steel,
    family: 'metal',
    E: p(206, 4, HANDBOOK),
    density: p(7850, 30, HANDBOOK),
    heat: p(470, 20, HANDBOOK),
    conductivity: p(50, 5, HANDBOOK),
    expansion: p(12, 1, EXPANSION),
    melts: p(1480, 30, HANDBOOK),
    shear: p(290, 40, VDI),
    yield: p(235, 20, memory('EN 10025-2:2019', place.s235)),
  },
  stainless: {
    name: say.materials.stainless,
    family: 'metal',
    E: p(195, 5, HANDBOOK),
    density: p(7900, 50, HANDBOOK),
    heat: p(500, 15, HANDBOOK),
    conductivity: p(15, 1, HANDBOOK),
    expansion: p(17.3, 0.5, EXPANSION),
    melts: p(1400, 20, HANDBOOK),
    shear: p(415, 50, VDI),
    yield: p(210, 20, memory('EN 10088-2:2014', place.stainless)),
  },
  brass: {
    name: say.materials.brass,
    family: 'metal',
    E: p(97, 5, METALS),
    density: p(8450, 50, METALS),
    heat: p(380, 5, METALS),
    conductivity: p(120, 8, METALS),
    expansion: p(20, 1, METALS),
    // Not the 900 to 940 °C of brass richer in copper.
    melts: p(885, 12, METALS),
    shear: p(250, 40, METALS),
    yield: p(250, 100, METALS),
  },
  copper: {
    name: say.materials.copper,
    family: 'metal',
    E: p(120, 8, HANDBOOK),
    density: p(8960, 20, HANDBOOK),
    heat: p(385, 5, HANDBOOK),
    conductivity: p(390, 10, HANDBOOK),
    expansion: p(17, 0.5, EXPANSION),
    melts: p(1084.6, 0.5, FIXED_POINT),
    shear: p(170, 25, METALS),
    yield: p(200, 120, METALS),
  },
  'soda-glass': {
    name: say.materials['soda-glass'],
    family: 'glass',
    E: p(70, 4, GLASS),
    density: p(2500, 30, GLASS),
    heat: p(830, 40, GLASS),
    conductivity: p(1, 0.1, GLASS),
    expansion: p(8.5, 0.7, EXPANSION),
    softens: p(550, 20, GLASS),
  },
  'boro-glass': {
    name: say.materials['boro-glass'],
    family: 'glass',
    E: p(64, 2, GLASS),
    density: p(2230, 20, GLASS),
    heat: p(830, 40, GLASS),
    conductivity: p(1.15, 0.1, GLASS),
    expansion: p(3.3, 0.1, EXPANSION),
    softens: p(525, 20, GLASS),
  },
  pla: {
    name: say.materials.pla,
    family: 'polymer',
    E: p(3.5, 0.4, PLA_PAPER),
    density: p(1245, 20, PLA_PAPER),
    heat: p(1800, 200, commonPractice),
    conductivity: p(0.13, 0.03, commonPractice),
    expansion: p(68, 20, MOULDED),
    softens: p(60, 4, PLA_PAPER),
    melts: p(160, 15, MOULDED),
    shear: p(33, 8, MOULDED),
    yield: p(50, 8, MOULDED),
  },
  petg: {
    name: say.materials.petg,
    family: 'polymer',
    E: p(2.1, 0.2, MOULDED),
    density: p(1270, 15, MOULDED),
    heat: p(1200, 150, MOULDED),
    conductivity: p(0.2, 0.03, MOULDED),
    expansion: p(68, 15, MOULDED),
    softens: p(80, 4, MOULDED),
    shear: p(30, 7, MOULDED),
    yield: p(48, 6, MOULDED),
  },
  abs: {
    name: say.materials.abs,
    family: 'polymer',
    E: p(2.2, 0.3, MOULDED),
    density: p(1040, 20, CRAWFORD),
    heat: p(1300, 150, CRAWFORD),
    conductivity: p(0.25, 0.07, CRAWFORD),
    // Two printed tables: 74 and 90.
    expansion: p(85, 12, CRAWFORD),
    softens: p(105, 10, MOULDED),
    shear: p(25, 6, MOULDED),
    yield: p(42, 6, MOULDED),
  },
  pa66: {
    name: say.materials.pa66,
    family: 'polymer',
    E: p(1.6, 0.4, MOULDED),
    density: p(1140, 15, CRAWFORD),
    heat: p(1700, 150, CRAWFORD),
    conductivity: p(0.24, 0.04, CRAWFORD),
    expansion: p(90, 10, CRAWFORD),
    softens: p(56, 10, CRAWFORD),
    melts: p(258, 7, MOULDED),
    shear: p(66, 12, commonPractice),
    yield: p(55, 10, MOULDED),
  },
  pc: {
    name: say.materials.pc,
    family: 'polymer',
    E: p(2.35, 0.15, MOULDED),
    density: p(1200, 50, CRAWFORD),
    heat: p(1200, 100, CRAWFORD),
    conductivity: p(0.2, 0.02, CRAWFORD),
    expansion: p(65, 5, CRAWFORD),
    softens: p(149, 3, CRAWFORD),
    shear: p(63, 7, commonPractice),
    yield: p(62, 4, MOULDED),
  },
  pom: {
    name: say.materials.pom,
    family: 'polymer',
    E: p(2.8, 0.3, MOULDED),
    density: p(1410, 10, CRAWFORD),
    heat: p(1500, 100, CRAWFORD),
    conductivity: p(0.2, 0.1, CRAWFORD),
    expansion: p(95, 15, CRAWFORD),
    melts: p(165, 5, MOULDED),
    shear: p(65, 8, commonPractice),
    yield: p(65, 5, MOULDED),
  },
  pei: {
    name: say.materials.pei,
    family: 'polymer',
    E: p(3, 0.3, MOULDED),
    density: p(1270, 10, CRAWFORD),
    heat: p(1300, 200, MOULDED),
    conductivity: p(0.22, 0.02, CRAWFORD),
    expansion: p(56, 3, CRAWFORD),
    // The table rounds to 200; data sheets say 215 to 217.
    softens: p(215, 5, MOULDED),
    yield: p(105, 5, MOULDED),
  },
  peek: {
    name: say.materials.peek,
    family: 'polymer',
    E: p(3.6, 0.3, MOULDED),
    density: p(1300, 20, CRAWFORD),
    heat: p(1340, 250, MOULDED),
    conductivity: p(0.25, 0.04, MOULDED),
    expansion: p(48, 4, CRAWFORD),
    softens: p(143, 3, CRAWFORD),
    melts: p(343, 3, MOULDED),
    shear: p(53, 6, commonPractice),
    yield: p(95, 8, MOULDED),
  },
  ptfe: {
    name: say.materials.ptfe,
    family: 'polymer',
    E: p(0.5, 0.1, MOULDED),
    density: p(2160, 60, CRAWFORD),
    heat: p(1000, 50, CRAWFORD),
    conductivity: p(0.25, 0.02, CRAWFORD),
    expansion: p(140, 20, CRAWFORD),
    // Gels without flowing; a liner serves to about 240 °C only, and gives off harmful gas from about 400 °C.
    melts: p(327, 2, memory('Engineering Plastics Handbook (2006)', place.fluorinated)),
    yield: p(10, 3, MOULDED),
  },
  pp: {
    name: say.materials.pp,
    family: 'polymer',
    E: p(1.3, 0.3, MOULDED),
    density: p(905, 5, CRAWFORD),
    heat: p(2000, 150, CRAWFORD),
    conductivity: p(0.2, 0.02, CRAWFORD),
    expansion: p(100, 20, CRAWFORD),
    melts: p(163, 4, MOULDED),
    shear: p(39, 6, commonPractice),
    yield: p(32, 4, MOULDED),
  },
} as const satisfies Readonly<Record<string, Material>>;
