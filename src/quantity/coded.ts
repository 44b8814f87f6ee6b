import { unitById, type Kind, type Unit } from './unit';
import say from './words/en';

/** A number in a unit, or why what was typed gives none; undefined where it is not written in one of these ways. */
type Coded = { readonly number: number; readonly unit: Unit } | { readonly reason: string } | undefined;

/** Letters that stand for mark and unit at once (IEC 60062): by kind, the unit that each means. */
const LETTERS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  resistance: { R: 'ohm', r: 'ohm', k: 'kohm', K: 'kohm', M: 'Mohm' },
  voltage: { V: 'V', v: 'V' },
};

/** `4k7`, `R47`, `1M`, `3V3`. */
const LETTERED = /^([+-]?)(\d*)([A-Za-z])(\d*)(?:\s*(?:Ω|ohms?))?$/;

function readLettered(text: string, kind: Kind): Coded {
  const [, sign = '', whole = '', letter = '', tenths = ''] = LETTERED.exec(text) ?? [];
  const unit = unitById(kind, LETTERS[kind.id]?.[letter] ?? '');
  if (!unit || `${whole}${tenths}` === '') return undefined;
  const number = Number(`${whole || '0'}.${tenths || '0'}`);
  return { number: sign === '-' ? -number : number, unit };
}

/** `1:30` and `1:02:30`, the last part with tenths if need be; a unit behind two parts says which they are. */
const CLOCK = /^([+-]?)(\d+):(\d{1,2}(?:[.,]\d*)?)(?::(\d{1,2}(?:[.,]\d*)?))?\s*(h|min|)$/i;

const numberOf = (part: string): number => Number(part.replace(',', '.'));

/** Hours, minutes and seconds, or minutes and seconds. Where the field is in hours, two parts may be either: asked about. */
function readClock(text: string, kind: Kind, field: Unit): Coded {
  if (kind.id !== 'time' || !text.includes(':')) return undefined;
  const [all, sign, first = '', second = '', third, named = ''] = CLOCK.exec(text) ?? [];
  const [s, min, h] = [unitById(kind, 's'), unitById(kind, 'min'), unitById(kind, 'h')];
  if (!s || !min || !h) return undefined;
  const parts = [second, ...(third === undefined ? [] : [third])];
  const isMiddle = third !== undefined && !/^\d+$/.test(second);
  if (all === undefined || isMiddle || parts.some((part) => numberOf(part) >= 60))
    return { reason: say.typed.noClock(text) };
  const given = named.toLowerCase();
  if (third !== undefined) {
    if (given === 'min') return { reason: say.typed.noClock(text) };
    const seconds = (Number(first) * 60 + Number(second)) * 60 + numberOf(third);
    return { number: sign === '-' ? -seconds : seconds, unit: s };
  }
  if (given === '' && field.id === 'h') return { reason: say.typed.whichClock(text, first, second) };
  const sixtieths = Number(first) * 60 + numberOf(second);
  return { number: sign === '-' ? -sixtieths : sixtieths, unit: given === 'h' ? min : s };
}

/** What is not a number with a unit behind it, but one of the trade's other ways to write a quantity. */
export function readCoded(text: string, kind: Kind, field: Unit): Coded {
  return readClock(text, kind, field) ?? readLettered(text, kind);
}
