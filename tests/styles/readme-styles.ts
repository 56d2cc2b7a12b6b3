import { measureFits } from '../../src/core/checks/check-fits';
import { layNet, newOptions, newSizes } from '../../src/core/net';
import { type BoxStyle, STYLES, symbolsFor } from '../../src/core/styles';
import { inches } from '../../src/core/units';
import { NOT_MODELLED } from '../solid/not-modelled';
import { ADD_ONS, type AddOn, bears } from './no-option';
import { closing } from './trials';

const START = '<!-- styles: written by npm run style -- readme -->';
const END = '<!-- end of styles -->';

const CALLED: Readonly<Record<AddOn, string>> = {
  window: 'window',
  notch: 'notch',
  slot: 'slot',
  ribbon: 'ribbon hole',
  corners: 'round corners',
  hangTab: 'hang tab',
  pull: 'ribbon pull',
};

/** Of 100 new boxes, how many close in the fit that binds most often: 10,000 trials a fit, in cardstock of three thicknesses. */
function closesOf(style: BoxStyle): string {
  const shares = [300, 350, 390].flatMap((caliperUm) => {
    const box = layNet(style, {
      sizes: newSizes(style),
      options: newOptions(style),
      caliperUm,
      mark: inches(0, 1, 16),
    });
    return measureFits(style, box).map(({ fit, clear }) => closing(clear / 320, fit.marks));
  });
  return shares.length === 0 ? '–' : `${Math.floor(Math.min(...shares) / 100)}`;
}

const row = (style: BoxStyle): string => {
  const sizes = symbolsFor(style, {}).filter(([, { role }]) => role === 'size');
  const pieces = layNet(style, { sizes: {}, caliperUm: 305 }).pieces.map(({ label }) => label.toLowerCase());
  const cells = [
    style.name,
    `\`${style.id}\``,
    pieces.join(', '),
    sizes.map(([, { label }]) => label.toLowerCase()).join(', '),
    ADD_ONS.filter((addOn) => bears(style, addOn))
      .map((addOn) => CALLED[addOn])
      .join(', ') || '–',
    style.id in NOT_MODELLED ? 'in part' : 'clear',
    closesOf(style),
  ];
  return `| ${cells.join(' | ')} |`;
};

/** The README with its table of styles as the styles themselves have it. */
export function withStyles(readme: string): string {
  const heads = ['style', 'at the desk', 'pieces', 'sizes', 'may have', 'solid card', 'of 100 close'];
  const table = [`| ${heads.join(' | ')} |`, `|${heads.map(() => '---').join('|')}|`, ...STYLES.map(row)];
  const [before = '', rest = ''] = readme.split(START);
  const after = rest.split(END)[1];
  if (after === undefined) throw new Error('the README has no place for the table of styles');
  return `${before}${START}\n\n${table.join('\n')}\n\n${END}${after}`;
}
