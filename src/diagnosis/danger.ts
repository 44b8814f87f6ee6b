import type { FirstAct } from './types';
import say from './words/en';

/*
 * Words of danger in what an owner writes: a text is cut into words, what is said of something else ("smoke-grey") or denied ("no
 * smoke") is left out, and what is left is held to rules of words that stand near each other. The words stand in words/en/danger.ts;
 * another language needs its own, not another mechanism. It is made to err towards danger: whoever is alarmed for nothing says it in
 * other words.
 */

export interface Danger {
  readonly first: FirstAct;
  /** Somebody felt the current, or something tripped because of it. */
  readonly shock: boolean;
}

type Group = keyof typeof say.danger;

/** A word to be met: any of several, each whole or a stem. `_` is any. */
type Place = readonly { readonly word: string; readonly stem: boolean }[];
type Phrase = readonly Place[];

interface Word {
  readonly word: string;
  /** Words of one sentence are alike in it. */
  readonly sentence: number;
}

interface Hit {
  readonly at: number;
  readonly end: number;
}

/** Shorter words are not guessed at: too many others are a slip away. */
const GUESSED = 6;
const SWAPPED = 5;

/** Words that a negation may stand before what it denies. */
const REACH = 7;

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[\p{M}\u200b’‘'`´]/gu, '')
    .toLowerCase();

const phraseOf = (text: string): Phrase =>
  text.split(/\s+/).map((place) =>
    place
      .split('/')
      .filter((word) => word !== '')
      .map((word) => ({ word: word.replace('*', ''), stem: word.endsWith('*') })),
  );

/** The phrases of a group by the letters that they may begin with: most words begin none. */
type ByLetter = ReadonlyMap<string, readonly Phrase[]>;

const phrases = new Map<Group, ByLetter>();

function phrasesOf(group: Group): ByLetter {
  const known = phrases.get(group);
  if (known) return known;
  const read = new Map<string, Phrase[]>();
  for (const text of plain(say.danger[group]).split(',')) {
    if (text.trim() === '') continue;
    const phrase = phraseOf(text.trim());
    for (const letter of new Set(phrase[0]?.map(({ word }) => word.charAt(0)))) {
      read.set(letter, [...(read.get(letter) ?? []), phrase]);
    }
  }
  phrases.set(group, read);
  return read;
}

/** Where two words first differ; the length of the first where they do not. */
function parting(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a.charAt(at) === b.charAt(at)) at += 1;
  return at;
}

/** Two letters changed about. */
function swapped(a: string, b: string): boolean {
  const at = parting(a, b);
  const turned = a.charAt(at + 1) + a.charAt(at);
  return at + 1 < a.length && b.slice(at) === turned + a.slice(at + 2);
}

/** The longer has one letter more, and not the first. */
function oneMore(long: string, short: string): boolean {
  const at = parting(short, long);
  return at > 0 && long.slice(at + 1) === short.slice(at);
}

/** A slip of the finger: two letters changed about, one left out, one too many. */
function slip(typed: string, word: string): boolean {
  if (!typed.startsWith(word.slice(0, 1)) || Math.abs(typed.length - word.length) > 1) return false;
  if (typed.length === word.length) return word.length >= SWAPPED && swapped(typed, word);
  if (word.length < GUESSED) return false;
  return typed.length > word.length ? oneMore(typed, word) : oneMore(word, typed);
}

/** A word of its own, however near to another. */
const isReal = (typed: string): boolean =>
  phrasesOf('real')
    .get(typed.charAt(0))
    ?.some(([place]) => place?.some(({ word }) => word === typed)) ?? false;

const fits = (typed: string, place: Place, exact: boolean): boolean =>
  place.some(({ word, stem }) => {
    if (word === '_') return true;
    if (stem ? typed.startsWith(word) : typed === word) return true;
    return !exact && !isReal(typed) && slip(stem ? typed.slice(0, word.length) : typed, word);
  });

/** Where a phrase stands from here, or undefined. */
function standsAt(words: readonly Word[], at: number, phrase: Phrase, exact: boolean): Hit | undefined {
  const first = words[at];
  const here = phrase.every((place, i) => {
    const one = words[at + i];
    return one !== undefined && one.sentence === first?.sentence && one.word !== '' && fits(one.word, place, exact);
  });
  return here ? { at, end: at + phrase.length } : undefined;
}

function hitsOf(words: readonly Word[], group: Group, exact = false): readonly Hit[] {
  const all = phrasesOf(group);
  return words.flatMap(({ word }, at) => {
    const here = (all.get(word.charAt(0)) ?? []).flatMap((phrase) => standsAt(words, at, phrase, exact) ?? []);
    return here.length > 0 ? [here.reduce((long, one) => (one.end > long.end ? one : long))] : [];
  });
}

function split(text: string): readonly Word[] {
  const words: Word[] = [];
  let sentence = 0;
  for (const [one] of plain(text).matchAll(/[\p{L}\p{N}]+(?:\.\p{N}+)?|[.;!?\n]/gu)) {
    if (/[.;!?\n]/.test(one) && one.length === 1) sentence += 1;
    else words.push({ word: one, sentence });
  }
  return words;
}

/** Each of these stretches as one word: joined, or nothing at all. */
function replaced(
  words: readonly Word[],
  hits: readonly Hit[],
  by: (stretch: readonly Word[]) => string,
): readonly Word[] {
  const out: Word[] = [];
  for (let at = 0; at < words.length;) {
    const hit = hits.find((one) => one.at === at);
    const stretch = words.slice(at, hit?.end ?? at + 1);
    const [first] = stretch;
    if (first) out.push(hit ? { word: by(stretch), sentence: first.sentence } : first);
    at += stretch.length;
  }
  return out;
}

/** What was written, ready to be asked. */
class Text {
  readonly #words: readonly Word[];
  readonly #denied: ReadonlySet<number>;
  readonly #known = new Map<Group, readonly Hit[]>();

  constructor(text: string) {
    const whole = split(text);
    const joined = replaced(whole, hitsOf(whole, 'joined', true), (stretch) =>
      stretch.map(({ word }) => word).join(''),
    );
    this.alarm = hitsOf(joined, 'alarm', true).length > 0;
    this.#words = replaced(joined, hitsOf(joined, 'innocent', true), () => '');
    this.#denied = this.#denials();
  }

  readonly alarm: boolean;

  /** Places of words that a negation before them denies. */
  #denials(): ReadonlySet<number> {
    const denied = new Set<number>();
    const idle = new Set(hitsOf(this.#words, 'idle', true).map(({ at }) => at));
    const past = hitsOf(this.#words, 'past', true);
    const fillers = new Set(hitsOf(this.#words, 'fillers', true).map(({ at }) => at));
    for (const { at } of hitsOf(this.#words, 'negations', true)) {
      // "Not smoking any more": it was.
      const was = past.some((one) => one.at >= at && one.at <= at + REACH && this.#together(one, { at, end: at }));
      if (idle.has(at) || was) continue;
      for (let i = at + 1; i <= at + REACH; i += 1) {
        if (this.#words[i]?.sentence !== this.#words[at]?.sentence) break;
        denied.add(i);
        if (!fillers.has(i)) break;
      }
    }
    return denied;
  }

  #hits(group: Group): readonly Hit[] {
    const known = this.#known.get(group) ?? hitsOf(this.#words, group);
    this.#known.set(group, known);
    return known;
  }

  /** What was said of a group and not denied. */
  said(group: Group): readonly Hit[] {
    const denied = this.#hits(group).filter(({ at }) => this.#denied.has(at));
    // With a phrase, what begins inside it is denied too: "not on fire".
    return this.#hits(group).filter(({ at }) => !denied.some((one) => one.at <= at && at < one.end));
  }

  has(group: Group): boolean {
    return this.said(group).length > 0;
  }

  /** Whether two things are said with at most so many words between them, in one sentence and apart from each other. */
  near(a: Group, b: Group, within: number): boolean {
    return this.said(a).some((one) => this.#beside(one, b, within));
  }

  /** Whether three things are said, both others near the first. */
  among(a: Group, b: Group, c: Group, within: number): boolean {
    return this.said(a).some((one) => this.#beside(one, b, within) && this.#beside(one, c, within));
  }

  /** Whether the second comes after the first, near it. */
  then(a: Group, b: Group, within: number): boolean {
    return this.said(a).some((one) =>
      this.#hits(b).some((other) => this.#together(one, other) && other.at >= one.end && other.at - one.end <= within),
    );
  }

  #together(one: Hit, other: Hit): boolean {
    return this.#words[one.at]?.sentence === this.#words[other.at]?.sentence;
  }

  #beside(one: Hit, group: Group, within: number): boolean {
    return this.said(group).some((other) => {
      if (!this.#together(one, other)) return false;
      const gap = other.at >= one.end ? other.at - one.end : one.at - other.end;
      return gap >= 0 && gap <= within;
    });
  }
}

const held = (text: Text): boolean =>
  text.has('held') ||
  text.near('letGo', 'people', 8) ||
  text.then('people', 'stuck', 2) ||
  (text.then('people', 'stuck', 6) && text.has('grabbing')) ||
  (text.then('people', 'collapsed', 8) && text.has('current'));

const fire = (text: Text): boolean =>
  text.alarm || text.has('fire') || (text.then('machine', 'burning', 1) && !text.near('burning', 'smell', 6));

const shock = (text: Text): boolean =>
  text.has('shock') ||
  (text.near('shockSoft', 'shockNear', 5) && !text.near('shockSoft', 'figurative', 10)) ||
  text.near('volts', 'case', 4) ||
  text.near('tester', 'bare', 6) ||
  (text.near('sting', 'touching', 8) && text.among('sting', 'bare', 'body', 12));

const plugHurt = (text: Text): boolean =>
  text.has('exposed') ||
  text.near('part', 'damage', 6) ||
  text.near('part', 'hot', 5) ||
  text.near('supplies', 'scalding', 4) ||
  text.near('partWide', 'wet', 6) ||
  text.near('partWide', 'spark', 3);

const trips = (text: Text): boolean =>
  text.near('breaker', 'trips', 4) || text.has('tripping') || text.among('mains', 'out', 'whenever', 10);

const heatsAlone = (text: Text): boolean =>
  text.near('heats', 'alone', 5) ||
  text.near('unstopped', 'warmer', 4) ||
  text.near('unstopped', 'hottish', 3) ||
  text.has('alwaysHot') ||
  (text.then('keeps', 'hottish', 3) && text.among('hottish', 'off', 'though', 12)) ||
  (text.near('keeps', 'hottish', 2) && text.near('keeps', 'off', 6)) ||
  text.among('hottish', 'off', 'though', 9) ||
  text.near('selfOn', 'warmer', 4) ||
  text.near('climbs', 'temperature', 6);

/** Where current runs, broken or burnt: no shock yet, and no plug that may not be touched. */
const wornOut = (text: Text): boolean =>
  text.near('boards', 'boardDamage', 4) ||
  text.near('sheath', 'frayed', 4) ||
  text.near('supplies', 'noise', 5) ||
  text.near('earth', 'broken', 4) ||
  text.has('unearthed');

const other = (text: Text): boolean =>
  trips(text) ||
  wornOut(text) ||
  heatsAlone(text) ||
  text.has('glow') ||
  text.near('smell', 'burnt', 8) ||
  text.has('acrid') ||
  text.has('spark') ||
  text.has('bang') ||
  text.among('spilled', 'liquid', 'machine', 6);

/**
 * What is to be done first where a text tells of a danger, or undefined where it tells of none.
 * @throws never
 */
export function dangerIn(text: string): Danger | undefined {
  if (text.trim() === '') return undefined;
  const read = new Text(text);
  const shocks = shock(read);
  if (held(read)) return { first: 'held', shock: true };
  if (fire(read)) return { first: 'fire', shock: shocks };
  if (shocks) return { first: 'breaker', shock: true };
  if (plugHurt(read)) return { first: 'breaker', shock: false };
  return other(read) ? { first: 'unplug', shock: trips(read) } : undefined;
}
