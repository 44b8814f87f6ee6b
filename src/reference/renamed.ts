/*
 * Names in records and links that are other ones today. What was kept or sent under an old name is found under the new
 * one; an old name is never given to anything else.
 */

/** A check's id, old to new. */
const checks = new Map([['dual-z-sync', 'two-z-screws']]);

/** Where a machine keeps a value, old to new. */
const places: ReadonlyMap<string, readonly string[]> = new Map([
  ['heater.watchdog-window', ['heater.guard-time']],
  ['extruder.pull-back', ['feed.retraction']],
  ['extruder.pull-back-speed', ['feed.retraction-speed']],
  ['extruder.most-pull-back', ['feed.most-retraction']],
  ['extruder.drive', ['feed.place']],
  ['hotend.cycle-time', ['heater.cycle-time']],
  ['steps.extruder', ['steps.feed']],
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

/** The first word of a place, old to new, where the place has no line above. */
const parts = new Map([['extruder', 'feed']]);

/** Options of a check (today's id) by its choice's symbol, old to new. */
const options: ReadonlyMap<string, ReadonlyMap<string, ReadonlyMap<string, string>>> = new Map([
  ['test-column', new Map([['foot', new Map([['brim', 'rim']])]])],
]);

/** What a case names: causes, inspections and what is known of the machine, old to new. */
const ofCases = new Map([
  ['pull-back-short', 'retraction-short'],
  ['pull-back', 'retraction-length'],
  ['strand-shape', 'extruded-shape'],
  ['strand-caliper', 'filament-caliper'],
  ['strand-teeth', 'filament-teeth'],
  ['end-switch-worn', 'limit-switch-worn'],
  ['warm-cupboard', 'warm-place'],
]);

/** Today's id of a check. */
export const checkNow = (id: string): string => checks.get(id) ?? id;

/** Whether a check has had this id, and has it no longer. */
export const isFormerCheck = (id: string): boolean => checks.has(id);

/** Where a value that was kept at this place stands today: one place, or several. */
export function placesNow(place: string): readonly string[] {
  const [part = '', ...thing] = place.split('.');
  return places.get(place) ?? [[parts.get(part) ?? part, ...thing].join('.')];
}

/** What a symbol of a check is called today: one name, or several. */
export const symbolsNow = (check: string, symbol: string): readonly string[] =>
  symbols.get(checkNow(check))?.get(symbol) ?? [symbol];

/** What an option of a check's choice is called today. */
export const optionNow = (check: string, symbol: string, option: string): string =>
  options.get(checkNow(check))?.get(symbol)?.get(option) ?? option;

/** What a cause, an inspection or a fact that a case names is called today. */
export const inCaseNow = (id: string): string => ofCases.get(id) ?? id;
