import type { Place } from '../../engine/places';
import type { Difference } from '../../machine/exchange-merge';
import type { Item } from '../../machine/exchange-plan';
import { isPlain } from '../../machine/schema-parts';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { unitById } from '../../quantity/unit';
import { printTime } from '../desk/time';

/** What the names of places stand for. */
export type Places = ReadonlyMap<string, Place>;

const FIELDS: Readonly<Record<string, string>> = {
  name: 'Name',
  note: 'Note',
  mark: 'Decimal mark',
  theme: 'Page',
  lengthUnit: 'Lengths in',
  forceUnit: 'Forces in',
  temperatureUnit: 'Temperatures in',
  headline: 'Instruction',
};

const labelOf = (place: Place): string => ('input' in place ? place.input.label : place.choice.label);

/** What a difference is about, for the person. */
export function printWhat({ file }: Item, { path }: Difference, places: Places): string {
  const [field, name] = path;
  const known = FIELDS[field] ?? field;
  switch (file.type) {
    case 'machine': {
      const place = name === undefined ? undefined : places.get(name);
      if (place) return labelOf(place);
      if (field === 'intervals') return `Days between checks, ${name ?? ''}`;
      return name ?? known;
    }
    case 'reading':
      return `Reading of ${printTime(file.at)}: ${name ?? known.toLowerCase()}`;
    case 'photo':
      return `Photo: ${known === 'jpeg' ? 'the picture' : known}`;
    case 'draft':
      return `Half typed, ${file.calculator}: ${name ?? known}`;
    case 'case':
      return `Case opened ${printTime(file.opened)}: ${name ?? known}`;
    case 'settings':
      return known;
  }
}

const SHOWN = 80;
const cut = (words: string): string => (words.length > SHOWN ? `${words.slice(0, SHOWN)}…` : words);

/** One side of a difference, for the person. */
export function printSide({ path }: Difference, side: unknown, places: Places, mark: DecimalMark): string {
  if (side === undefined) return '–';
  const place = path[1] === undefined ? undefined : places.get(path[1]);
  if (isPlain(side)) {
    const { value, half, unit, at, text } = side;
    if (place && 'input' in place && typeof value === 'number' && typeof half === 'number') {
      const { measure } = place.input;
      const shown = (typeof unit === 'string' ? unitById(measure.kind, unit) : undefined) ?? measure.unit;
      return `${formatMeasured(value, half, shown, { mark })}${typeof at === 'string' ? `, ${printTime(at)}` : ''}`;
    }
    if (typeof text === 'string') return cut(text);
    return typeof value === 'number' ? `${value} (SI)` : 'set';
  }
  if (place && 'choice' in place && typeof side === 'string') return place.choice.options[side]?.label ?? cut(side);
  if (typeof side === 'boolean') return side ? 'yes' : 'no';
  if (path[0] === 'jpeg') return 'another picture';
  if (Array.isArray(side)) return `${side.length} in all`;
  return typeof side === 'string' || typeof side === 'number' ? cut(String(side)) || '(empty)' : 'none';
}
