import { expect, test } from 'vitest';
import { fileName } from '../../src/ui/frame/save-as';

test.each([
  ['Soap box', 'soap-box.json'],
  ['Fête à Zürich!', 'fete-a-zurich.json'],
  ['../../etc/passwd', 'etcpasswd.json'],
  ['箱', 'crease-and-count.json'],
  ['', 'crease-and-count.json'],
])('a recipe called "%s" is saved as %s', (name, file) => {
  expect(fileName(name, 'json')).toBe(file);
});
