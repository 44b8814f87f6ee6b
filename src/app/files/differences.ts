import type { Place } from '../../engine/places';
import type { Difference } from '../../machine/exchange-merge';
import type { Item } from '../../machine/exchange-plan';
import { isPlain } from '../../machine/plain';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { unitById } from '../../quantity/unit';
import type { Reading } from '../../machine/schema';
import { shownIn } from '../desk/reading-print';
import { printTime } from '../desk/time';
import say from './words/en';

/** What the names of places stand for. */
export type Places = ReadonlyMap<string, Place>;

const FIELDS: Readonly<Record<string, string>> = say.difference.fields;

const labelOf = (place: Place): string => ('input' in place ? place.input.label : place.choice.label);

/** What a part of a reading was called there; undefined where that was not kept. */
function partOf(reading: Reading, [field, symbol = '']: Difference['path']): string | undefined {
  const map = field === 'entries' ? reading.entries : field === 'results' ? reading.results : reading.options;
  const name = map[symbol]?.name;
  return name === '' ? undefined : name;
}

/** What a difference is about, for the person. */
export function printWhat({ file, here }: Item, { path }: Difference, places: Places): string {
  const [field, name] = path;
  const known = FIELDS[field] ?? field;
  switch (file.type) {
    case 'machine': {
      const place = name === undefined ? undefined : places.get(name);
      if (place) return labelOf(place);
      if (field === 'intervals') return say.difference.interval(name ?? '');
      return name ?? known;
    }
    case 'reading': {
      const part = partOf(file, path) ?? (here?.type === 'reading' ? partOf(here, path) : undefined);
      return say.difference.reading(printTime(file.at), part ?? name ?? known.toLowerCase());
    }
    case 'photo':
      return say.difference.photo(known === 'jpeg' ? say.difference.picture : known);
    case 'draft':
      return say.difference.draft(file.calculator, name ?? known);
    case 'typed':
      return say.difference.typed(file.field);
    case 'case':
      return say.difference.case(printTime(file.opened), name ?? known);
    case 'settings':
      return known;
  }
}

const SHOWN = 80;
const cut = (words: string): string => (words.length > SHOWN ? `${words.slice(0, SHOWN)}…` : words);

/** A part of a record that is no value of a machine. */
function printPart({ value, half, kind, unit, text, sentence }: Readonly<Record<string, unknown>>, mark: DecimalMark) {
  const words = typeof text === 'string' ? text : sentence;
  if (typeof words === 'string') return cut(words) || say.difference.empty;
  if (typeof value !== 'number') return say.difference.set;
  if (typeof half !== 'number' || typeof kind !== 'string' || typeof unit !== 'string' || kind === '')
    return say.difference.inSi(value);
  return formatMeasured(value, half, shownIn({ kind, unit }), { mark });
}

/** One side of a difference, for the person. */
export function printSide({ path }: Difference, side: unknown, places: Places, mark: DecimalMark): string {
  if (side === undefined) return say.difference.nothing;
  const place = path[1] === undefined ? undefined : places.get(path[1]);
  if (isPlain(side)) {
    const { value, half, unit, at } = side;
    if (place && 'input' in place && typeof value === 'number' && typeof half === 'number') {
      const { measure } = place.input;
      const shown = (typeof unit === 'string' ? unitById(measure.kind, unit) : undefined) ?? measure.unit;
      const printed = formatMeasured(value, half, shown, { mark });
      return typeof at === 'string' ? say.difference.valueAt(printed, printTime(at)) : printed;
    }
    return printPart(side, mark);
  }
  if (place && 'choice' in place && typeof side === 'string') return place.choice.options[side]?.label ?? cut(side);
  if (typeof side === 'boolean') return side ? say.difference.yes : say.difference.no;
  if (path[0] === 'jpeg') return say.difference.otherPicture;
  if (Array.isArray(side)) return say.difference.inAll(side.length);
  return typeof side === 'string' || typeof side === 'number'
    ? cut(String(side)) || say.difference.empty
    : say.difference.none;
}
