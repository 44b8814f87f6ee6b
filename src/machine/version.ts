import type { Settings } from './schema';

/** Version of the records written now. A change of shape adds one, a migration in schema.ts and a test. */
export const VERSION = 6;

export const defaultSettings: Settings = {
  v: VERSION,
  type: 'settings',
  mark: 'point',
  theme: 'system',
  lengthUnit: 'mm',
  forceUnit: 'N',
  temperatureUnit: 'C',
  machine: null,
  seenVersion: '',
  lastExport: null,
  persistAsked: null,
};
