/** Version of the records written now. A change of shape adds one, a migration in schema.ts and a test. */
export const VERSION = 6;

/** Settings of a device on which nothing was set. */
export const defaultSettings = {
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
} as const;
