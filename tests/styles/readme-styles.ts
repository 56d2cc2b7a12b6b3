import { layNet } from '../../src/core/net';
import { type BoxStyle, STYLES, symbolsFor } from '../../src/core/styles';

const START = '<!-- styles: written by npm run style -- readme -->';
const END = '<!-- end of styles -->';

const row = (style: BoxStyle): string => {
  const sizes = symbolsFor(style, {}).filter(([, { role }]) => role === 'size');
  const pieces = layNet(style, { sizes: {}, caliperUm: 305 }).pieces.map(({ label }) => label.toLowerCase());
  return `| ${style.name} | \`${style.id}\` | ${pieces.join(', ')} | ${sizes.map(([, { label }]) => label.toLowerCase()).join(', ')} |`;
};

/** The README with its table of styles as the styles themselves have it. */
export function withStyles(readme: string): string {
  const table = ['| style | at the desk | pieces | sizes |', '|---|---|---|---|', ...STYLES.map(row)];
  const [before = '', rest = ''] = readme.split(START);
  const after = rest.split(END)[1];
  if (after === undefined) throw new Error('the README has no place for the table of styles');
  return `${before}${START}\n\n${table.join('\n')}\n\n${END}${after}`;
}
