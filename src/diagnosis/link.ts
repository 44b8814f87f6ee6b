import type { Logged } from './same';
import type { Course } from './types';
import say from './words/en';

/*
 * The form: `v=2&i=id&s=symptom&o=opened&n=machine&w=owner&c=complaint&f=fact.1&e=a.check.answer.time.note&x=how.time.proof`.
 * One `f` for each fact answered, one `e` for each entry of the log, in order; texts are escaped, and a full stop in a note is
 * none of the partings, as the note comes last. Times are milliseconds since 1970 in base 36.
 */
/** 2: an entry may be none of safety (`u`), and one of a mend says by which way (`ym`, `nm`: mended; `yr`, `nr`: replaced). */
const VERSION = 2;
/** Written where a newer entry is not in the log, so that an older Trammel still opens the link. */
const OLDER = 1;

const LONGEST = 24_000;
const MOST_PARTS = 700;

/** A case as it travels: what the person who asked for help needs to see, and nothing of the machine but its name. */
export interface Letter extends Course {
  readonly id: string;
  /** What the sender calls the machine. */
  readonly machine: string;
  readonly owner: string;
  readonly complaint: string;
  readonly opened: string;
  readonly log: readonly Logged[];
  readonly closed: { readonly at: string; readonly how: string; readonly proof: string } | null;
}

export type Opened = { readonly ok: true; readonly letter: Letter } | { readonly ok: false; readonly reason: string };

const time = (iso: string): string => new Date(iso).getTime().toString(36);
/** Half a character, as a cut leaves it, cannot be escaped. */
const text = (words: string): string => encodeURIComponent(words.replace(/\p{Cs}/gu, '\uFFFD'));

const isNewer = (entry: Logged): boolean =>
  entry.kind === 'not safe' || (entry.kind === 'mended' && entry.remedy !== undefined);

function written(entry: Logged): string {
  const end = `${time(entry.at)}.${text(entry.note)}`;
  switch (entry.kind) {
    case 'made safe':
      return `s.${end}`;
    case 'not safe':
      return `u.${entry.why === 'cannot' ? 'c' : 'w'}.${end}`;
    case 'answer':
      return `a.${entry.check}.${entry.answer}.${end}`;
    case 'skip':
      return `k.${entry.check}.${end}`;
    case 'ruled out':
      return `r.${entry.cause}.${entry.sure === 'certain' ? 'c' : 'f'}.${end}`;
    case 'mended':
      return `m.${entry.cause}.${entry.cured ? 'y' : 'n'}${entry.remedy?.charAt(0) ?? ''}.${end}`;
  }
}

/** A case as a query for an address: ASCII, without the `?`. */
export function encodeCase(letter: Letter): string {
  const { closed } = letter;
  return [
    `v=${letter.log.some(isNewer) ? VERSION : OLDER}`,
    `i=${letter.id}`,
    `s=${letter.symptom}`,
    `o=${time(letter.opened)}`,
    `n=${text(letter.machine)}`,
    ...(letter.owner === '' ? [] : [`w=${text(letter.owner)}`]),
    ...(letter.complaint === '' ? [] : [`c=${text(letter.complaint)}`]),
    ...Object.entries(letter.facts).map(([fact, holds]) => `f=${fact}.${holds ? 1 : 0}`),
    ...letter.log.map((entry) => `e=${written(entry)}`),
    ...(closed ? [`x=${text(closed.how).replaceAll('.', '%2E')}.${time(closed.at)}.${text(closed.proof)}`] : []),
  ].join('&');
}

/** The whole address of a case's link. @param app any address of the app; its own query and fragment are dropped */
export function caseAddress(app: string, query: string): string {
  const address = new URL(app);
  address.search = '';
  address.hash = '';
  return `${address.href}#/case/link?${query}`;
}

function unescaped(raw: string): string | undefined {
  try {
    return decodeURIComponent(raw);
  } catch {
    return undefined;
  }
}

/** Year 9999 at the latest: beyond it a date is written in another form. */
const LATEST = 253_402_300_799_999;

function readTime(raw: string): string | undefined {
  if (!/^[0-9a-z]{1,10}$/.test(raw)) return undefined;
  const ms = parseInt(raw, 36);
  return ms <= LATEST ? new Date(ms).toISOString() : undefined;
}

/** No id of the catalogue is longer, or written in other letters. */
const isId = (raw: string): boolean => /^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/.test(raw) && !(raw in Object.prototype);

/** Names of today for ids of old. */
type Names = (id: string) => string;

function readEntry(raw: string, now: Names): Logged | undefined {
  const [kind = '', ...rest] = raw.split('.');
  const count = { s: 0, u: 1, a: 2, k: 1, r: 2, m: 2 }[kind];
  if (count === undefined) return undefined;
  const [what = '', which = ''] = rest.slice(0, count).map((id, place) => (place === 0 ? now(id) : id));
  const at = readTime(rest[count] ?? '');
  const note = unescaped(rest.slice(count + 1).join('.'));
  if (at === undefined || note === undefined || (count > 0 && !isId(what))) return undefined;
  const said = { at, note };
  if (kind === 's') return { kind: 'made safe', ...said };
  if (kind === 'u') {
    const why: 'cannot' | 'will do' | undefined = what === 'c' ? 'cannot' : what === 'w' ? 'will do' : undefined;
    return why && { kind: 'not safe', why, ...said };
  }
  if (kind === 'k') return { kind: 'skip', check: what, ...said };
  if (kind === 'a') return isId(which) ? { kind: 'answer', check: what, answer: which, ...said } : undefined;
  if (kind === 'r') {
    const sure = which === 'c' ? 'certain' : which === 'f' ? 'fairly' : undefined;
    return sure && { kind: 'ruled out', cause: what, sure, ...said };
  }
  const [, cured, way] = /^([yn])([mr]?)$/.exec(which) ?? [];
  if (cured === undefined) return undefined;
  const remedy = way ? ({ remedy: way === 'm' ? 'mend' : 'replace' } as const) : {};
  return { kind: 'mended', cause: what, cured: cured === 'y', ...remedy, ...said };
}

function readClosed(raw: string): Letter['closed'] | undefined {
  const [how = '', when = '', ...proof] = raw.split('.');
  const [ended, at, words] = [unescaped(how), readTime(when), unescaped(proof.join('.'))];
  return ended === undefined || at === undefined || words === undefined ? undefined : { at, how: ended, proof: words };
}

/** Parts of which there is one at most. */
const SINGLE = 'isonwcx';

const refuse = (reason: string): Opened => ({ ok: false, reason });

/**
 * Reads what `encodeCase` wrote, or anything else that may stand in an address. A link with one bad part is refused whole:
 * half a case would lead to the wrong check. Whether the catalogue has its ids is for `unreadable` to say.
 * @param query what follows the `?`, with or without it
 * @param now names of today for ids of old
 * @throws never
 */
export function decodeCase(query: string, now: Names = (id) => id): Opened {
  if (query.length > LONGEST) return refuse(say.link.tooLong);
  const parts = query.replace(/^\?/, '').split('&');
  const version = Number(/^v=([1-9]\d{0,8})$/.exec(parts.shift() ?? '')?.[1]);
  if (Number.isNaN(version)) return refuse(say.link.garbled);
  if (version > VERSION) return refuse(say.link.newer);
  if (parts.length > MOST_PARTS) return refuse(say.link.garbled);
  const single = new Map<string, string>();
  const facts = new Map<string, boolean>();
  const log: Logged[] = [];
  for (const part of parts) {
    const [, name, raw] = /^([a-z])=(.*)$/s.exec(part) ?? [];
    if (name === undefined || raw === undefined) return refuse(say.link.garbled);
    if (name === 'f') {
      const [fact = '', holds] = raw.split('.');
      if (!isId(fact) || (holds !== '0' && holds !== '1')) return refuse(say.link.garbled);
      facts.set(now(fact), holds === '1');
    } else if (name === 'e') {
      const entry = readEntry(raw, now);
      if (!entry) return refuse(say.link.garbled);
      log.push(entry);
    } else if (single.has(name) || !SINGLE.includes(name)) return refuse(say.link.garbled);
    else single.set(name, raw);
  }
  const words = (name: string): string | undefined => unescaped(single.get(name) ?? '');
  const [id = '', symptom = ''] = [single.get('i'), single.get('s')];
  const opened = readTime(single.get('o') ?? '');
  const [machine, owner, complaint] = [words('n'), words('w'), words('c')];
  const ended = single.get('x');
  const closed = ended === undefined ? null : readClosed(ended);
  if (!isId(id) || !isId(symptom) || opened === undefined || closed === undefined) return refuse(say.link.garbled);
  if (machine === undefined || owner === undefined || complaint === undefined) return refuse(say.link.garbled);
  const letter = { id, symptom, machine, owner, complaint, opened, facts: Object.fromEntries(facts), log, closed };
  return { ok: true, letter };
}
