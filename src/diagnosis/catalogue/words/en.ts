import type { CatalogueWords } from '../wording';
import { bedCauses } from './en/bed-causes';
import { bedInspections } from './en/bed-inspections';
import { facts } from './en/facts';
import { heatCauses } from './en/heat-causes';
import { heatInspections } from './en/heat-inspections';
import { meltCauses } from './en/melt-causes';
import { meltInspections } from './en/melt-inspections';
import { motionCauses } from './en/motion-causes';
import { motionInspections } from './en/motion-inspections';
import { symptoms } from './en/symptoms';
import { tools } from './en/tools';
import { zCauses } from './en/z-causes';
import { zInspections } from './en/z-inspections';

/** Words of the catalogue: what people complain of, what may be the cause, what to look at and what to do. */
const en: CatalogueWords = {
  symptoms,
  causes: { ...zCauses, ...motionCauses, ...bedCauses, ...meltCauses, ...heatCauses },
  facts,
  inspections: {
    ...zInspections,
    ...motionInspections,
    ...bedInspections,
    ...meltInspections,
    ...heatInspections,
  },
  tools,
};
export default en;
