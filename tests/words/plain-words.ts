import ts from 'typescript';

/** Words and patterns nobody at a craft table would say, each with what to write. Source: the vocabulary of this house, decided by us. */
const EVERYWHERE: readonly (readonly [pattern: RegExp, write: string])[] = [
  [/\b(?:tele)phones?\b/i, 'phone'],
  [/\b(?:upon|anew|afresh|to and fro)\b/i, 'on, again'],
  [/\breckon\w*/i, 'count on'],
  [/\bcupboards?\b/i, 'supplies'],
  [/\b(?:she|her|hers|herself)\b/i, 'the maker, or you'],
  [/\b(?:colours?|coloured|neighbours?|fibres?|practis\w+|jewellery|theatre)\b/i, 'the US spelling'],
  [/\b(?:centi|milli|micro)?metres?\b/i, 'meter'],
];

const ON_PAGES: typeof EVERYWHERE = [
  ...EVERYWHERE,
  [/\bmend\w*/i, 'fix'],
  [/\b(?:the|into the) bin\b/i, 'trash'],
  [/\bthings?\b/i, 'item'],
  [/\brecipes?\b/i, 'box'],
  [/\b(?:bench cards?|run sheets?|cutting sheets?)\b/i, 'step card, batch sheet, cutting plan'],
  [/(?<!\b(?:step|gift|post|place) )\bcards?\b/i, 'cardstock'],
  [/\b(?:roughness|stylus)\b/i, 'fiddliness, tip'],
  [/\b(?:common practice|no source|from memory)\b/i, 'rule of thumb'],
  [/\bsweets\b/i, 'candy'],
  [/\btowards\b/i, 'toward'],
  [/\b(?:lies|stands|wants|falls (?:away|off))\b/i, 'is, needs'],
  [/\bcomes? (?:about|to)\b/i, 'is'],
  [/\b(?:were|whose|wherein|thereof)\b/i, 'a plain verb'],
  [/\b0 (?:a|an) (?:favor|round|box|day|hour)\b/i, 'per'],
  [/ so\.?$/i, 'like this'],
  [/^What (?:is|are|it|each|stands|comes|goes on)\b[^?]*$/i, 'a noun'],
];

/** Allowed all the same, each as it stands in a catalogue. */
const ALLOWED: ReadonlySet<string> = new Set([
  'Just trying things out: nothing you’ve saved changes.',
  'Anyone whose idea or help you used. Printed at the end.',
]);

/** What of a text is not plain, with what to write: `mend: fix`. `page` says it is read by a maker, not only by who works on the app. */
export const notPlain = (text: string, page: boolean): string[] =>
  ALLOWED.has(text)
    ? []
    : (page ? ON_PAGES : EVERYWHERE).flatMap(([pattern, write]) => {
        const [found] = pattern.exec(text) ?? [];
        return found === undefined ? [] : [`${found.trim()}: ${write}`];
      });

/** Keys whose texts are what a maker types or names of files, not what is read. */
const NOT_READ = /^(also|locale|faces)$/;

/** The texts of a catalogue, `0` for each value that is put in. */
export function catalogueTexts(source: string): string[] {
  const tree = ts.createSourceFile('catalogue.ts', source, ts.ScriptTarget.Latest, true);
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node) || ts.isElementAccessExpression(node)) return;
    if (ts.isPropertyAssignment(node)) {
      if (!NOT_READ.test(node.name.getText(tree))) visit(node.initializer);
      return;
    }
    if (ts.isBinaryExpression(node) && /^[!=]==$/.test(node.operatorToken.getText(tree))) return;
    if (ts.isNewExpression(node)) return;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) texts.push(node.text);
    if (ts.isTemplateExpression(node))
      texts.push([node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('0'));
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return texts.filter((text) => /\p{L}{2,}/u.test(text));
}

/** The comments that explain a name (those that begin with two stars), one text each. */
export const docComments = (source: string): string[] =>
  [...source.matchAll(/\/\*\*([\s\S]*?)\*\//g)].map(([, text = '']) => text.replace(/\n\s*\*/g, ' ').trim());

/** The running text of a page of Markdown: no code, tables, pictures or addresses. */
export const markdownText = (source: string): string[] =>
  source
    .replace(/```[\s\S]*?```/g, '')
    .split(/\n{2,}|\n(?=[-#|\d])/)
    .filter((block) => !/^\s*(\||!\[|#)/.test(block))
    .map((block) =>
      block
        .replace(/`[^`]*`/g, 'code')
        .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((block) => block !== '');

export interface Reading {
  readonly sentences: number;
  readonly average: number;
  readonly longest: number;
  readonly longestSays: string;
}

/** How long the sentences of some texts are, in words. A text without a full stop is a label and no sentence. */
export function readingOf(texts: readonly string[]): Reading {
  const sentences = texts
    .flatMap((text) => text.match(/[^.?!]*(?:[.?!](?!\s|$|[”’"])[^.?!]*)*[.?!]+[”’"]?(?=\s|$)/gu) ?? [])
    .map((sentence) => sentence.trim());
  const words = sentences.map(
    (sentence) => sentence.split(/[\s–—]+/).filter((word) => /[\p{L}\d]/u.test(word)).length,
  );
  const longest = Math.max(0, ...words);
  return {
    sentences: words.length,
    average: words.length === 0 ? 0 : words.reduce((sum, count) => sum + count, 0) / words.length,
    longest,
    longestSays: sentences[words.indexOf(longest)] ?? '',
  };
}
