import ts from 'typescript';

const MOST_OF_FILE = 300;
const MOST_OF_FUNCTION = 80;

/** Code too long to be read at once: the file, and every function in it, as `path:line name, lines`. */
export function tooLong(path: string, text: string): string[] {
  const lines = text.split('\n').length - 1;
  const file = lines > MOST_OF_FILE ? [`${path}, ${lines}`] : [];
  if (!/\.tsx?$/.test(path)) return file;
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const lineOf = (at: number) => source.getLineAndCharacterOfPosition(at).line;
  const look = (node: ts.Node): void => {
    if (ts.isFunctionLike(node)) {
      const first = lineOf(node.getStart());
      const length = lineOf(node.end) - first + 1;
      if (length > MOST_OF_FUNCTION) found.push(`${path}:${first + 1} ${nameOf(node)}, ${length}`);
    }
    ts.forEachChild(node, look);
  };
  look(source);
  return [...file, ...found];
}

function nameOf(node: ts.SignatureDeclaration): string {
  const named = node.name ?? (ts.isVariableDeclaration(node.parent) ? node.parent.name : undefined);
  return named?.getText() ?? 'a function';
}
