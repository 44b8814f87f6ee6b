import { plainText } from '../quantity/plain';
import { parseQuantity, type DecimalMark } from '../quantity/parse';
import { fromSi, toSi, unitById, type Kind, type Unit } from '../quantity/unit';
import { optionNow, symbolsNow } from '../reference/renamed';
import { AS_MARKED, toolById } from '../reference/tools';
import type { Calculator, InputSpec } from './calculator';
import type { Entry, InputUsed } from './entry';
import type { Evaluation, Situation } from './evaluate';
import { nameOf } from './name';
import { signedText } from './signs';
import say from './words/en';

/*
 * The form: `v=1&drive=belt&dh=0.75~0.02;mm;caliper&P_h=8;mm;as-marked&z=20`. First the version, then options that differ
 * from the typical one, then inputs that do: text as typed with `~` for ±, unit, tool. Empty fields at the end are left
 * out, and the unit where the kind has only one. `;in` alone is a typical value shown in inches. Decimals carry a point.
 * Only the first `v` is the version: a calculator may have an input of that name.
 */
const VERSION = 1;

const LONGEST_QUERY = 4000;
const MOST_PARTS = 200;
/** As in a draft. */
export const LONGEST_TEXT = 120;
const LONGEST_QUOTE = 40;

/** What a link carries: what was typed, and the machine's values as if typed. */
export interface LinkValues {
  readonly entries: Record<string, Entry>;
  readonly choices: Record<string, string>;
}

export type Encoded = { readonly ok: true; readonly query: string } | { readonly ok: false; readonly reason: string };

/** `leftOut` has one sentence for each thing that the link holds and that could not be taken over. */
export type Decoded =
  | { readonly ok: true; readonly values: LinkValues; readonly leftOut: readonly string[] }
  | { readonly ok: false; readonly reason: string };

/** True when a check's address carries values: what follows the `?` in the fragment, with or without the `?`. */
export function hasValues(query: string): boolean {
  return query.replace(/^\?/, '') !== '';
}

const withoutUnit = (part: string): string => part.replace(/(?!e[+-]?\d)[a-zµμ°′″"”'%].*$/i, '');

/**
 * `8 mm +- 0,1 mm` as a link writes it beside the unit mm: `8~0.1`. Units stay where the text would mean something else
 * without. For text that was understood: a comma in it is a decimal mark.
 */
function shortText(text: string, kind: Kind, unit: Unit): string {
  const whole = plainText(text)
    .replace(/\s*(?:\+\s*\/?\s*-|±)\s*/g, '~')
    .replace(/\s+/g, ' ')
    .replace(/(?<!\d) | (?!\d)/g, '')
    .replaceAll(',', '.');
  const [main = '', ...half] = whole.split('~');
  const meant = parseQuantity(longText(whole, 'point'), kind, unit);
  const isSame = (short: string): boolean => {
    const read = parseQuantity(longText(short, 'point'), kind, unit);
    return read.ok && meant.ok && read.value === meant.value && read.half === meant.half && read.unit === meant.unit;
  };
  const shorter = [[main, ...half].map(withoutUnit).join('~'), [withoutUnit(main), ...half].join('~')];
  return shorter.find(isSame) ?? whole;
}

function longText(short: string, mark: DecimalMark): string {
  const text = short.replaceAll('~', ' ± ');
  return mark === 'comma' ? text.replaceAll('.', ',') : text;
}

/** The fewest digits that read back to exactly this SI value; where no digits do, the nearest. */
function digitsFor(si: number, near: number, back: (shown: number) => number): string {
  for (let digits = 1; digits <= 17; digits += 1) {
    const shown = Number(near.toPrecision(digits));
    if (back(shown) === si) return String(shown);
  }
  const neighbours = [near * (1 + Number.EPSILON), near * (1 - Number.EPSILON)];
  return String(neighbours.find((shown) => back(shown) === si) ?? near);
}

/** A machine's value as text with its half-width, so that it reads the same where the machine is not known. */
function keptText({ value, half, unit }: InputUsed): string {
  const main = digitsFor(value, fromSi(value, unit), (shown) => toSi(shown, unit));
  return `${main}~${digitsFor(half, half / unit.factor, (shown) => shown * unit.factor)}`;
}

const readsKind = (tool: string, kind: Kind): boolean =>
  tool === '' || tool === AS_MARKED || toolById(tool)?.kind === kind.id;

function joined(text: string, unit: Unit, tool: string, kind: Kind): string {
  const fields = [text, kind.units.length > 1 ? unit.id : '', readsKind(tool, kind) ? tool : ''];
  while (fields.at(-1) === '') fields.pop();
  return fields.map((field) => encodeURIComponent(field).replaceAll('%2F', '/')).join(';');
}

/** An input as the link writes it; empty where it stands at its typical value in its own unit. */
function written(spec: InputSpec, state: InputUsed, entry: Entry | undefined): string {
  const { kind, unit } = spec.measure;
  if (state.kept) {
    const tool = state.origin === 'nameplate' ? AS_MARKED : state.tool === AS_MARKED ? '' : state.tool;
    return joined(keptText(state), state.unit, tool, kind);
  }
  if (entry && state.origin !== 'typical')
    return joined(shortText(entry.text, kind, state.unit), state.unit, entry.tool, kind);
  return state.unit.id === unit.id ? '' : joined('', state.unit, entry?.tool ?? spec.tool ?? '', kind);
}

/**
 * The inputs in force and the options as a query for a check's address. Values from the machine are written out, since
 * the other phone does not have it.
 *
 * @param evaluation of `situation`
 * @returns ASCII without the `?`, or a sentence that names the entry that is to be put right first
 */
export function encodeLink(calc: Calculator, evaluation: Evaluation, situation: Situation): Encoded {
  const parts = [`v=${VERSION}`];
  for (const [name, option] of Object.entries(evaluation.choices)) {
    if (option !== calc.choices[name]?.typical) parts.push(`${name}=${encodeURIComponent(option)}`);
  }
  for (const [symbol, state] of Object.entries(evaluation.inputs)) {
    const spec = calc.inputs[symbol];
    if (!spec || (!state.ok && state.blank)) continue;
    const name = nameOf(calc, symbol);
    if (!state.ok) return { ok: false, reason: say.link.putRight(name, state.reason) };
    if (state.kept && state.origin === 'typical') {
      return { ok: false, reason: say.link.typicalKept(name) };
    }
    const value = written(spec, state, situation.entries[symbol]);
    if (value !== '') parts.push(`${symbol}=${value}`);
  }
  return { ok: true, query: parts.join('&') };
}

/**
 * The whole link to one check.
 *
 * @param app any address of the app; its own query and fragment are dropped
 */
export function linkAddress(app: string, id: string, query: string): string {
  const address = new URL(app);
  address.search = '';
  address.hash = '';
  return `${address.href}#/check/${id}?${query}`;
}

/** Words of a link as quoted in a sentence: cut, and without what would turn or hide other text. */
function quoted(words: string): string {
  const plain = Array.from(words.replace(/\p{C}/gu, ''));
  const shown = plain.slice(0, LONGEST_QUOTE).join('');
  return say.link.quoted(shown, plain.length > LONGEST_QUOTE);
}

function unescaped(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

/** The entry that a part stands for, or why there is none, as a sentence. */
function readPart(spec: InputSpec, raw: string, mark: DecimalMark): Entry | string {
  const { left } = say.link;
  const whole = quoted(unescaped(raw) ?? raw);
  const { kind } = spec.measure;
  const fields = raw.split(';').map(unescaped);
  const [short = '', unitId = '', tool = ''] = fields;
  if (fields.length > 3 || fields.includes(undefined)) return left.garbled(spec.label, whole);
  if (short.length > LONGEST_TEXT) return left.tooLong(spec.label, whole);
  const unit = unitId === '' && kind.units.length === 1 ? kind.units[0] : unitById(kind, unitId);
  if (!unit) return unitId === '' ? left.noUnit(spec.label, whole) : left.unit(spec.label, whole, quoted(unitId));
  if (!readsKind(tool, kind)) return left.tool(spec.label, whole, quoted(tool));
  if (short !== '') {
    const typed = parseQuantity(longText(short, 'point'), kind, unit, 'point');
    if (!typed.ok) return left.number(spec.label, whole);
  }
  return { text: signedText(spec, longText(short, mark)), unit: unit.id, tool };
}

/** The query of a link to a check under the symbols and options of today. */
export const queryNow = (id: string, query: string): string =>
  query
    .split('&')
    .flatMap((part) => {
      const [, name = part, value] = /^([^=]*)=(.*)$/s.exec(part) ?? [];
      const rest = value === undefined ? '' : `=${optionNow(id, name, value)}`;
      return symbolsNow(id, name).map((symbol) => `${symbol}${rest}`);
    })
    .join('&');

/**
 * Reads what `encodeLink` wrote, or anything else that may stand in an address.
 *
 * @param query what follows the `?`, with or without it
 * @param mark the reader's decimal mark, for the texts
 * @throws never
 */
export function decodeLink(calc: Calculator, query: string, mark: DecimalMark = 'point'): Decoded {
  const refuse = (reason: string): Decoded => ({ ok: false, reason });
  if (query.length > LONGEST_QUERY) return refuse(say.link.tooLong);
  const [first = '', ...parts] = query.replace(/^\?/, '').split('&');
  const version = Number(/^v=([1-9]\d{0,8})$/.exec(first)?.[1]);
  if (Number.isNaN(version)) {
    return refuse(say.link.noForm);
  }
  if (version > VERSION) {
    return refuse(say.link.newer(version, VERSION));
  }
  if (parts.length > MOST_PARTS) return refuse(say.link.tooMany);
  const entries: Record<string, Entry> = {};
  const choices: Record<string, string> = {};
  const leftOut: string[] = [];
  for (const part of parts) {
    if (part === '') continue;
    const [, name = part, raw = ''] = /^([^=]*)=(.*)$/s.exec(part) ?? [];
    const choice = Object.hasOwn(calc.choices, name) ? calc.choices[name] : undefined;
    const spec = Object.hasOwn(calc.inputs, name) ? calc.inputs[name] : undefined;
    const label = choice?.label ?? spec?.label;
    if (Object.hasOwn(entries, name) || Object.hasOwn(choices, name)) {
      leftOut.push(say.link.twice(label ?? quoted(name)));
    } else if (choice) {
      const option = unescaped(raw);
      if (option !== undefined && Object.hasOwn(choice.options, option)) choices[name] = option;
      else leftOut.push(say.link.noOption(choice.label, quoted(option ?? raw)));
    } else if (spec) {
      const read = readPart(spec, raw, mark);
      if (typeof read !== 'string') entries[name] = read;
      else leftOut.push(read);
    } else {
      leftOut.push(say.link.noValue(quoted(unescaped(part) ?? part)));
    }
  }
  return { ok: true, values: { entries, choices }, leftOut };
}
