import { bedCauses } from './bed-causes';
import { bedInspections } from './bed-inspections';
import { heatCauses } from './heat-causes';
import { heatInspections } from './heat-inspections';
import { machineSymptoms } from './machine-symptoms';
import { meltCauses } from './melt-causes';
import { meltInspections } from './melt-inspections';
import { motionCauses } from './motion-causes';
import { motionInspections } from './motion-inspections';
import { partSymptoms } from './part-symptoms';
import { zCauses } from './z-causes';
import { zInspections } from './z-inspections';

export { facts } from './facts';

/* Everything the diagnosis knows, without a word of any language. */

export const symptoms = [...partSymptoms, ...machineSymptoms];
export const causes = [...zCauses, ...motionCauses, ...bedCauses, ...meltCauses, ...heatCauses];
export const inspections = [
  ...zInspections,
  ...motionInspections,
  ...bedInspections,
  ...meltInspections,
  ...heatInspections,
];
