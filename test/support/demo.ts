import twoZScrews from '../../src/calculators/two-z-screws/index';
import { demoReadings as madeBy } from '../../src/app/desk/demo-readings';

export { demoMachine } from '../../src/machine/demo';

/** The readings that the app puts on the bench with the demo machine. */
export const demoReadings = madeBy(twoZScrews);
