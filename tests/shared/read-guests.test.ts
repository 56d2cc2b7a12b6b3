import { describe, expect, test } from 'vitest';
import { readGuests } from '../../shared/read-guests';

const LINES = [
  { id: 'gold', name: 'Gold box' },
  { id: 'blue', name: 'Blue box' },
];
const said = (text: string) =>
  readGuests(text, LINES).guests.map(({ name, table, needs, lineId }) => [name, table, needs, lineId]);

describe('a guest list', () => {
  test('is read from names alone, one a line, commas or none', () => {
    expect(said('Ana Lindqvist\n\n  Ben Okafor \n')).toEqual([
      ['Ana Lindqvist', '', '', null],
      ['Ben Okafor', '', '', null],
    ]);
  });

  test('is read without heads as name, table, needs, favor', () => {
    expect(said('Ana,1,no nuts,Blue box\nBen,2')).toEqual([
      ['Ana', '1', 'no nuts', 'blue'],
      ['Ben', '2', '', null],
    ]);
  });

  test('is read as a spreadsheet copies it: tabs, heads in any order, first and last name apart', () => {
    const text = 'Table #\tLast name\tFirst name\tDiet\tAge\n3\tLindqvist\tAna\tvegan\t40\n';
    expect(said(text)).toEqual([['Ana Lindqvist', '3', 'vegan', null]]);
  });

  test('is read as RFC 4180 writes it: quotes, commas and line breaks inside, CRLF, a byte order mark', () => {
    const text = '\uFEFFName,Needs\r\n"Lindqvist, Ana","no nuts,\r\nno ""hidden"" milk"\r\n';
    expect(said(text)).toEqual([['Lindqvist, Ana', '', 'no nuts, no "hidden" milk', null]]);
  });

  test('names what it cannot place: a favor that is not there, a line without a name', () => {
    const heard = readGuests('Name,Favor\nAna,Red box\n,Gold box\n', LINES);
    expect(heard.unknownFavors).toEqual(['Red box']);
    expect(heard.unread).toEqual([{ line: 3, text: ', Gold box' }]);
    expect(heard.guests).toMatchObject([{ name: 'Ana', lineId: null }]);
  });

  test('gives a guest the same id each time, and two guests of one name two ids', () => {
    const ids = (text: string) => readGuests(text, LINES).guests.map(({ id }) => id);
    const [first, second, third] = ids('Ana\nBen\nana');
    expect(ids('Ben\nAna')).toEqual([second, first]);
    expect(third).toBe(`${first}-2`);
  });
});
