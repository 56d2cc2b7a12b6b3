import ts from 'typescript';

/** Attributes whose text is read or heard by the maker. */
const SPEAKING =
  /^(title|alt|placeholder|label|head|help|caption|text|of|name|unit|aria-(label|description|valuetext|roledescription|placeholder))$/;
/** Properties that hold what is said; those of an id, a place or a name of ours do not. */
const SAYING = /^(title|placeholder|label|head|help|says|caption|aria-label)$/;
const MEANT_FOR_CODE = /^(id|key|code|kind|at|className|d|points|transform|viewBox)$/;
/** Calls whose words are read by the browser, or by whoever mends a fault. */
const SILENT_CALLS =
  /^(classNames|querySelector|querySelectorAll|matches|closest|getElementById|getContext|matchMedia|\w*Error|RegExp)$/;

/** Units and signs stand apart from language. */
const isUnit = (text: string) =>
  /^(in|mm|cm|m|yd|g|kg|s|min|h)$/.test(text.replace(/[^\p{L}]+/gu, ' ').trim());
const hasWord = (text: string) => /\p{L}{2,}/u.test(text) && !isUnit(text);
/** Reads as language: two words with a space between, or one written like the beginning of a sentence. */
const looksSpoken = (text: string) =>
  (/\p{L}{2,}[,.:;]? \p{L}+/u.test(text) || /^\p{Lu}\p{Ll}{2,}\p{P}?$/u.test(text)) && !/^\(.*\)$/.test(text);

/** Text that a maker would read and that stands in the code in place of a catalogue, as `file:line: text`. */
export function hardCodedText(file: string, source: string): string[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, false, ts.ScriptKind.TSX);
  const found: string[] = [];
  const tell = (node: ts.Node, text: string) => {
    const { line } = tree.getLineAndCharacterOfPosition(node.getStart(tree));
    found.push(`${file}:${line + 1}: ${text.trim().replace(/\s+/g, ' ')}`);
  };
  const visit = (node: ts.Node, saying: boolean): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
    if (isSilent(node, tree)) return;
    if (ts.isJsxText(node)) {
      if (hasWord(node.text)) tell(node, node.text);
      return;
    }
    if (ts.isJsxAttribute(node)) {
      const { initializer } = node;
      if (!initializer || !ts.isStringLiteral(initializer))
        ts.forEachChild(node, (child) => visit(child, false));
      else if (SPEAKING.test(node.name.getText(tree)) && hasWord(initializer.text))
        tell(node, initializer.text);
      return;
    }
    const text = textOf(node);
    if (text !== null && (looksSpoken(text) || (saying && hasWord(text)))) tell(node, text);
    const says = ts.isPropertyAssignment(node) && SAYING.test(nameOf(node.name, tree));
    ts.forEachChild(node, (child) => visit(child, says));
  };
  visit(tree, false);
  return found;
}

/** Sentences of the core with values pasted in, as `file:line`: nobody could say them in another language. Facts belong beside the template. */
export const pastedSentences = (file: string, source: string): string[] =>
  [...source.matchAll(/\b(?:(?:says|remedy):|reason\()\s*`[^`]*\$\{/g)].map(
    ({ index }) => `${file}:${source.slice(0, index).split('\n').length}`,
  );

const nameOf = (name: ts.Node, tree: ts.SourceFile) => name.getText(tree).replace(/['"]/g, '');

/** Nothing in it is read by the maker: names for code, comparisons with them, calls to the browser. */
function isSilent(node: ts.Node, tree: ts.SourceFile): boolean {
  if (ts.isJsxAttribute(node) || ts.isPropertyAssignment(node))
    return MEANT_FOR_CODE.test(nameOf(node.name, tree));
  if (ts.isBinaryExpression(node)) return /^[!=]==?$/.test(node.operatorToken.getText(tree));
  if (ts.isCaseClause(node)) return false;
  if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) return false;
  const { expression } = node;
  const called = ts.isPropertyAccessExpression(expression) ? expression.name.text : expression.getText(tree);
  return SILENT_CALLS.test(called);
}

/** The fixed text of a literal, or of a template with a 0 for each value. */
function textOf(node: ts.Node): string | null {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (!ts.isTemplateExpression(node)) return null;
  return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('0');
}
