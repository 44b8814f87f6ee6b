import type { Place } from '../../engine/places';
import type { Difference } from '../../machine/exchange-merge';
import type { Item } from '../../machine/exchange-plan';
import { isPlain } from '../../machine/schema-parts';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { unitById } from '../../quantity/unit';
import { printTime } from '../desk/time';
import say from './words/en';

/** What the names of places stand for. */
export type Places = ReadonlyMap<string, Place>;

const FIELDS: Readonly<Record<string, string>> = say.difference.fields;

const labelOf = (place: Place): string => ('input' in place ? place.input.label : place.choice.label);

/** What a difference is about, for the person. */
export function printWhat({ file }: Item, { path }: Difference, places: Places): string {
  const [field, name] = path;
  const known = FIELDS[field] ?? field;
  switch (file.type) {
    case 'machine': {
      const place = name === undefined ? undefined : places.get(name);
      if (place) return labelOf(place);
      if (field === 'intervals') return say.difference.interval(name ?? '');
      return name ?? known;
    }
    case 'reading':
      return say.difference.reading(printTime(file.at), name ?? known.toLowerCase());
    case 'photo':
      return say.difference.photo(known === 'jpeg' ? say.difference.picture : known);
    case 'draft':
      return say.difference.draft(file.calculator, name ?? known);
    case 'case':
      return say.difference.case(printTime(file.opened), name ?? known);
    case 'settings':
      return known;
  }
}

const SHOWN = 80;
const cut = (words: string): string => (words.length > SHOWN ? `${words.slice(0, SHOWN)}…` : words);

/** One side of a difference, for the person. */
export function printSide({ path }: Difference, side: unknown, places: Places, mark: DecimalMark): string {
  if (side === undefined) return say.difference.nothing;
  const place = path[1] === undefined ? undefined : places.get(path[1]);
  if (isPlain(side)) {
    const { value, half, unit, at, text } = side;
    if (place && 'input' in place && typeof value === 'number' && typeof half === 'number') {
      const { measure } = place.input;
      const shown = (typeof unit === 'string' ? unitById(measure.kind, unit) : undefined) ?? measure.unit;
      const printed = formatMeasured(value, half, shown, { mark });
      return typeof at === 'string' ? say.difference.valueAt(printed, printTime(at)) : printed;
    }
    if (typeof text === 'string') return cut(text);
    return typeof value === 'number' ? say.difference.inSi(value) : say.difference.set;
  }
  if (place && 'choice' in place && typeof side === 'string') return place.choice.options[side]?.label ?? cut(side);
  if (typeof side === 'boolean') return side ? say.difference.yes : say.difference.no;
  if (path[0] === 'jpeg') return say.difference.otherPicture;
  if (Array.isArray(side)) return say.difference.inAll(side.length);
  return typeof side === 'string' || typeof side === 'number'
    ? cut(String(side)) || say.difference.empty
    : say.difference.none;
}
