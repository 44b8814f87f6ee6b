import type { Catalogue } from '../types';
import { bedCauses } from './bed-causes';
import { bedChecks } from './bed-checks';
import { facts } from './facts';
import { heatCauses } from './heat-causes';
import { heatChecks } from './heat-checks';
import { meltCauses } from './melt-causes';
import { meltChecks } from './melt-checks';
import { motionCauses } from './motion-causes';
import { motionChecks } from './motion-checks';
import { machineSymptoms } from './machine-symptoms';
import { partSymptoms } from './part-symptoms';
import { zCauses } from './z-causes';
import { zChecks } from './z-checks';

/** Everything the diagnosis knows. Load it when a case is opened: it is long. */
export const catalogue: Catalogue = {
  symptoms: [...partSymptoms, ...machineSymptoms],
  causes: [...zCauses, ...motionCauses, ...bedCauses, ...meltCauses, ...heatCauses],
  facts,
  checks: [...zChecks, ...motionChecks, ...bedChecks, ...meltChecks, ...heatChecks],
};
