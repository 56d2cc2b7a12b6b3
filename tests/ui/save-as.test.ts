import { expect, test } from 'vitest';
import { fileName } from '../../src/ui/frame/save-as';
import { recordFault } from '../setup/fault-record';

test.each([
  ['Soap box', 'soap-box.json'],
  ['Fête à Zürich!', 'fête-à-zürich.json'],
  ['Łódź 2', 'łódź-2.json'],
  ['../../etc/passwd', 'etc-passwd.json'],
  ['箱', '箱.json'],
  ['صندوق البذور', 'صندوق-البذور.json'],
  ['बीज का डिब्बा', 'बीज-का-डिब्बा.json'],
  ['CON', 'con-1.json'],
  ['lpt1.txt', 'lpt1-txt.json'],
  ['箱'.repeat(80), `${'箱'.repeat(50)}.json`],
  ['\u200b', 'crease-and-count.json'],
  ['🎉', 'crease-and-count.json'],
  ['', 'crease-and-count.json'],
])('a recipe called "%s" is saved as %s', (name, file) => {
  expect(fileName(name, 'json')).toBe(file);
});

test('two events whose names share no letter with the Latin script are two files', (context) => {
  const names = ['Свадьба', 'Юбилей', '结婚', '誕生日', 'זאטע', 'عرس', 'Γάμος', 'งานแต่ง'];
  const files = new Set(names.map((name) => fileName(name, 'json')));
  files.delete(fileName('', 'json'));
  recordFault(context, {
    fault: 'a name of another script lost from a file’s name',
    tries: names.length,
    lost: names.length - files.size,
    goal: 0,
  });
});
