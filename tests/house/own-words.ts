import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { panelLabels } from '../../src/core/bench/words/panel-labels';
import { layNet } from '../../src/core/net';
import { panelWords } from '../../src/core/net/panel-words';
import { STYLES } from '../../src/core/styles';

const SPEAKS = ['src/core', 'src/print', 'shared'];

/** Every fixed text of the core and its tables: the keys another language gives its words under. Templates with values pasted in are none. */
export function writtenTexts(): ReadonlySet<string> {
  const texts = new Set<string>();
  const files = SPEAKS.flatMap((folder) =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => join(entry.parentPath, entry.name)),
  );
  for (const file of files)
    for (const text of literalsOf(readFileSync(file, 'utf8')))
      if (/\p{L}{2,}|\{/u.test(text)) texts.add(text);
  return texts;
}

const scanner = ts.createScanner(ts.ScriptTarget.Latest, true);

/** The literals of a source file that hold no values; read token by token, which is five times faster than as a tree. */
function literalsOf(source: string): string[] {
  const literals: string[] = [];
  /** Braces open in each template that is being read. */
  const templates: number[] = [];
  scanner.setText(source);
  for (let token = scanner.scan(); token !== ts.SyntaxKind.EndOfFileToken; token = scanner.scan()) {
    const depth = templates.at(-1) ?? 0;
    if (token === ts.SyntaxKind.CloseBraceToken && templates.length > 0 && depth === 0)
      token = scanner.reScanTemplateToken(false);
    else if (token === ts.SyntaxKind.CloseBraceToken)
      templates.splice(-1, 1, ...(templates.length > 0 ? [depth - 1] : []));
    else if (token === ts.SyntaxKind.OpenBraceToken)
      templates.splice(-1, 1, ...(templates.length > 0 ? [depth + 1] : []));
    if (token === ts.SyntaxKind.TemplateHead) templates.push(0);
    if (token === ts.SyntaxKind.TemplateTail) templates.pop();
    if (token === ts.SyntaxKind.StringLiteral || token === ts.SyntaxKind.NoSubstitutionTemplateLiteral)
      literals.push(scanner.getTokenValue());
  }
  return literals;
}

/** What a style calls its panels, pieces, sizes and choices, in every style with every way of making it. */
export function styleWords(): ReadonlySet<string> {
  const words = new Set<string>();
  for (const style of STYLES) {
    const { symbols, options = {}, quantities = {} } = style;
    for (const { label } of Object.values(symbols)) words.add(label).add(label.toLowerCase());
    for (const { means } of Object.values(quantities))
      words.add((means.split(/[:,]/)[0] ?? '').toLowerCase());
    for (const { choices } of Object.values(options)) for (const { label } of choices) words.add(label);
    const ways = Object.entries(options).flatMap(([option, { choices, addOn }]) =>
      addOn ? [] : choices.map(({ id }) => ({ [option]: id })),
    );
    for (const chosen of [{}, ...ways]) {
      const { pieces, whole } = layNet(style, { sizes: {}, caliperUm: 300, options: chosen });
      for (const piece of [...pieces, ...(whole ? [whole] : [])]) {
        words.add(piece.label).add(piece.label.toLowerCase());
        for (const label of panelLabels(piece).values()) words.add(label);
        for (const { panel } of piece.faces) words.add(panelWords(panel));
      }
    }
  }
  return words;
}
