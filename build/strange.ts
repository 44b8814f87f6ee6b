/** `marked`: every word followed by MARK. `pseudo`: accented look-alikes in brackets, a third longer. */
export type Style = 'marked' | 'pseudo';

export const isStyle = (language: string): language is Style => language === 'marked' || language === 'pseudo';

/** Stands after every word of a `marked` build: no width, and Playwright's text matching leaves it out. */
export const MARK = '\u200B';

const PLAIN = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
const ACCENTED = 'ÅƁÇÐÉƑĜĤÎĴĶĻṀÑÖÞɊŔŠŢÛṼŴẊÝŽåƀçðéƒĝĥîĵķļṁñöþɋŕšţûṽŵẋýž';

export const accented = (text: string): string =>
  text.replace(/[A-Za-z]/g, (letter) => ACCENTED.charAt(PLAIN.indexOf(letter)));

/** A third of the text's length in signs that a line can break between. */
export const padding = (text: string): string => ' ····'.repeat(Math.ceil(text.length / 15));

export const mark = (text: string): string => text.replace(/[\p{L}\p{M}]+/gu, (word) => `${word}${MARK}`);

/** A whole entry of a words file as a build in this style holds it. */
export function inStyle(text: string, style: Style): string {
  if (style === 'marked') return mark(text);
  return /[A-Za-z]/.test(text) ? `⟦${accented(text)}${padding(text)}⟧` : text;
}
