/*
 * Names in records and links that are other ones today. What was kept or sent under an old name is found under the new
 * one; an old name is never given to anything else.
 */

/** A check's id, old to new. */
const checks = new Map([['dual-z-sync', 'two-z-screws']]);

/** Where a machine keeps a value, old to new. */
const places: ReadonlyMap<string, readonly string[]> = new Map([
  ['heater.watchdog-window', ['heater.guard-time']],
  ['extruder.pull-back-speed', ['extruder.retraction-speed']],
  ['extruder.most-pull-back', ['extruder.most-retraction']],
  // One setting did two jobs.
  ['heater.watchdog-hysteresis', ['heater.guard-lag', 'heater.guard-rise']],
]);

/** Symbols of a check (today's id), old to new; several where one value did the work of several. */
const symbols: ReadonlyMap<string, ReadonlyMap<string, readonly string[]>> = new Map([
  [
    'heater-check',
    new Map([
      ['W', ['t_g']],
      ['H', ['dT_l', 'dT_g']],
      ['f_H', ['f_g']],
      ['dT_W', ['dT_h']],
      ['H_m', ['dT_m']],
    ]),
  ],
]);

/** Today's id of a check. */
export const checkNow = (id: string): string => checks.get(id) ?? id;

/** Whether a check has had this id, and has it no longer. */
export const isFormerCheck = (id: string): boolean => checks.has(id);

/** Where a value that was kept at this place stands today: one place, or several. */
export const placesNow = (place: string): readonly string[] => places.get(place) ?? [place];

/** What a symbol of a check is called today: one name, or several. */
export const symbolsNow = (check: string, symbol: string): readonly string[] =>
  symbols.get(checkNow(check))?.get(symbol) ?? [symbol];
