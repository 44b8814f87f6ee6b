import say from './words/en';

/** The ten parts of a machine, by number (design: the machine drawn). */
export type Part = keyof typeof say.parts;

/** The part that a place belongs to, by the first word of its name. */
const PART_OF: Readonly<Record<string, Part>> = {
  bed: 'bed',
  belt: 'belts',
  carriage: 'guides',
  feed: 'feed',
  filament: 'feed',
  frame: 'frame',
  guide: 'guides',
  heater: 'nozzle',
  nozzle: 'nozzle',
  offset: 'bed',
  print: 'print',
  room: 'room',
  sensor: 'nozzle',
  steps: 'electrics',
  wheel: 'guides',
  z: 'z',
};

/** @returns undefined for a place of a check that is not known here */
export function partOf(place: string): Part | undefined {
  return PART_OF[place.split('.', 1)[0] ?? ''];
}

/** A part as the person calls it. */
export const partName = (part: Part): string => say.parts[part];
