import { describe, expect, it } from 'vitest';
import { inStyle } from '../../build/strange';
import { leftovers, quotable, stringsIn, worksCited } from '../support/leftovers';
import { some } from '../support/sweep';

const wordsLeft = (text: string, given: readonly string[] = [], style: 'marked' | 'pseudo' = 'marked') =>
  leftovers([{ text, where: 'p', route: '#/' }], given, style).flatMap(({ words }) => words);

const marked = (text: string) => inStyle(text, 'marked');

describe('words that no words file gave', () => {
  it('are found one by one between those that are marked', () => {
    expect(wordsLeft(marked('Keep the reading'))).toEqual([]);
    expect(wordsLeft('Keep the reading')).toEqual(['Keep', 'the', 'reading']);
    expect(wordsLeft(`${marked('Keep')} the ${marked('reading')}`)).toEqual(['the']);
    expect(wordsLeft(`${marked('Grö')}ße é`)).toEqual(['ße']);
  });

  it('are not units, but a unit that is a word too must stand by a number', () => {
    expect(wordsLeft('0.750 ± 0.035 mm, (1.0 ± 0.1) kHz, 2 turn, 3 in, 4.0 N·mm, 5 Pa·sⁿ')).toEqual([]);
    expect(wordsLeft('in')).toEqual([]);
    expect(wordsLeft('-40 dB')).toEqual([]);
    expect(wordsLeft(`${marked('Accepted')}: mm, in, thou ${marked('or')} ft.`)).toEqual([]);
    expect(wordsLeft('Take it, in the end')).toEqual(['Take', 'it', 'the', 'end']);
    expect(wordsLeft('mm/m')).toEqual([]);
    expect(wordsLeft('turn in the screw')).toEqual(['turn', 'in', 'the', 'screw']);
    expect(wordsLeft('2 turns')).toEqual(['turns']);
  });

  it('are not designations, dates, names of files, nor what a person wrote', () => {
    expect(wordsLeft('M4 3D GT2 PLA PETG A4')).toEqual([]);
    expect(wordsLeft('dh_bed')).toEqual([]);
    expect(wordsLeft('STAND')).toEqual(['STAND']);
    expect(wordsLeft('25 Nov 2026, Nov 25, 10:00 AM, May 2026')).toEqual([]);
    expect(wordsLeft('May be')).toEqual(['May', 'be']);
    expect(wordsLeft('trammel-left-bench-2026-05-06.json')).toEqual([]);
    expect(wordsLeft(`Left bench, ${marked('in all')}`, ['Left bench', 'x'])).toEqual([]);
    expect(wordsLeft('Left benches', ['Left bench'])).toEqual(['Left', 'benches']);
  });

  it('are not what a person wrote, cut short', () => {
    const [name] = ['Town repair workshop, by the window'];
    expect(wordsLeft(`${marked('machine')} “Town repair works…”: ${marked('kept')}`, [name])).toEqual([]);
    expect(wordsLeft('“Town…”', [name])).toEqual(['Town']);
    expect(wordsLeft('“Town repair mill…”', [name])).toEqual(['Town', 'repair', 'mill']);
    expect(wordsLeft('The Town repair works…', [name])).toEqual(['The']);
  });

  it('are not what a link holds, where it is quoted and nowhere else', () => {
    const parts = quotable('v=1&dh=0.75;parsec&q=%3Cb%3Ebold&e=m.nut.y.A%20note');
    expect(wordsLeft(`${marked('the unit')} “parsec” ${marked('is none')}`, parts)).toEqual([]);
    expect(wordsLeft('“<b>bold”, “nut”', parts)).toEqual([]);
    expect(wordsLeft('a parsec', parts)).toEqual(['parsec']);
  });

  it('are not the names of a record’s fields, where it is said to be bad at them', () => {
    expect(wordsLeft(`${marked('This record cannot be read at')} “values.z.lead.half”`)).toEqual([]);
    expect(wordsLeft('“id”, “entries.3.unit”')).toEqual([]);
    expect(wordsLeft(`${marked('this should be one of')}: too close, none.`)).toEqual([]);
    expect(wordsLeft(`${marked('this should be one')} of: too close, none.`)).not.toEqual([]);
    expect(wordsLeft('id “bench”')).toEqual(['id', 'bench']);
  });

  it('are plain letters in an accented build', () => {
    expect(wordsLeft(inStyle('Keep the reading', 'pseudo'), [], 'pseudo')).toEqual([]);
    expect(wordsLeft(`${inStyle('Keep', 'pseudo')} the reading`, [], 'pseudo')).toEqual(['the', 'reading']);
  });

  it('are not the names of works', () => {
    const works = worksCited();
    const cited = works.filter((work) => work.includes('Handbook'));
    expect(cited, 'no handbook is found where works are cited: CITED in test/support/leftovers.ts').not.toEqual([]);
    for (const work of some(cited, 8))
      expect(wordsLeft(`${marked('After')} ${work}, ${marked('page')} 3`, works), work).toEqual([]);
  });

  it('takes every string of a record as given', () => {
    expect(stringsIn({ a: 'one', b: [{ c: 'two' }, 3, null] })).toEqual(['one', 'two']);
  });
});
