import { CAUTIONS, type CardStep, type CautionCode } from '../core/bench';
import { drawNetToFit } from '../core/draw/net/net-drawing';
import { lengthText } from '../core/draw/strokes/length-text';
import { setFractions } from '../core/draw/strokes/set-fractions';
import type { Ruler } from '../core/units';
import { DRESSING_HEADS, dressingLists } from './dressing-block';
import { type HandoutInput, handoutContent, KEPT_HEAD } from './handout-content';
import { drawFinished, looksOf } from './look-steps';
import { stepPicture } from './step-picture';
import { escapeXml, svgOf } from './svg';
import { placeTips } from './tip-places';

/** The look of the handout as a page of its own: large type, one column, pictures as wide as a phone. */
const PRINTED_STYLE = [
  ':root{color-scheme:light}',
  'body{margin:0;background:#fdfcf8;color:#22262a;font:400 1.125rem/1.5 Inter,system-ui,sans-serif}',
  'main{max-width:42rem;margin:0 auto;padding:1.25rem}',
  'h1{font-size:1.9rem;line-height:1.2}h2{margin-top:2.5rem;font-size:1.4rem}h3{margin:0 0 .5rem;font-size:1.15rem}',
  'svg,img{display:block;max-width:100%;height:auto;margin:1rem 0}svg{overflow:visible}',
  'ol{padding-left:1.5rem}ol>li{margin:0 0 2rem}',
  '.marks{display:flex;flex-wrap:wrap;gap:.25rem 1.5rem;padding:0;list-style:none}.marks b{font-size:1.5rem}',
  '.note,.care{margin:.75rem 0;padding:.25rem .75rem;border-left:3px solid #8a8577}.care{border-color:#9a3f0f;background:#fbeade}',
  'ul{padding-left:1.25rem}table{width:100%;font-size:1rem;border-collapse:collapse}th,td{padding:.4rem .75rem .4rem 0;text-align:left;border-bottom:1px solid #d3cec2}',
].join('');

/** As wide as a phone, so that the numbers of the net keep their size there. */
const PHONE = { space: { widthMm: 84, heightMm: 120 }, textMm: 3.6 };

/** The handout as one HTML file that needs nothing else: for a phone, or to send. No script, no address but the recipe's own link. */
export function handoutPage(input: HandoutInput): string {
  const { recipe, net, cards, ruler, link, photos } = input;
  const content = handoutContent(input);
  const tips = placeTips(recipe.handout?.tips ?? [], cards);
  let drawn = 0;
  /** Each caution stands at the first step that calls for it, and once more below all steps. */
  const warned = new Set<CautionCode>();
  /** Names inside a page are used once: every picture brings its own. */
  const picture = (svg: string) => {
    drawn += 1;
    return svg
      .replace('aria-labelledby="title description"', `aria-labelledby="title-${drawn} description-${drawn}"`)
      .replace('id="title"', `id="title-${drawn}"`)
      .replace('id="description"', `id="description-${drawn}"`);
  };
  const list = (head: string, lines: readonly string[]) =>
    lines.length === 0
      ? ''
      : `<h2>${escapeXml(head)}</h2><ul>${lines.map((line) => `<li>${escapeXml(line)}</li>`).join('')}</ul>`;
  const row = (mark: 'th' | 'td', cells: readonly string[]) =>
    `<tr>${cells.map((cell) => `<${mark}>${escapeXml(cell)}</${mark}>`).join('')}</tr>`;
  const table = (heads: readonly string[], rows: readonly (readonly string[])[]) =>
    `<table>${row('th', heads)}${rows.map((cells) => row('td', cells)).join('')}</table>`;
  return [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">`,
    `<title>${escapeXml(content.title)}</title><style>${PRINTED_STYLE}</style></head><body><main>`,
    `<h1>${escapeXml(content.title)}</h1>`,
    picture(svgOf(drawFinished(input, { widthMm: 120, heightMm: 90 }))),
    ...photos.map(
      ({ name, jpeg, widthPx, heightPx }) =>
        `<img src="data:image/jpeg;base64,${jpeg}" alt="${escapeXml(name)}" width="${widthPx}" height="${heightPx}">`,
    ),
    `<p>${escapeXml(content.about)}</p><p>${escapeXml(content.effort)}</p>`,
    list('You need', content.tools),
    '<h2>Cut</h2>',
    table(
      ['What', 'Size', 'Or'],
      content.cuts.map(({ what, size, otherSize }) => [what, size, otherSize]),
    ),
    list('Before you begin', content.tips),
    ...cards.map((card) => {
      const steps = card.steps.map((step) => {
        const cautions = step.cautions.filter((code) => !warned.has(code));
        for (const code of cautions) warned.add(code);
        const shown = stepPicture(card, step);
        const notes = [...step.tips, ...tips.at(card, step).map(({ says }) => says)];
        return stepItem(step, ruler, { cautions, notes, picture: shown ? picture(svgOf(shown)) : '' });
      });
      const look = { ruler, textMm: PHONE.textMm, faceUp: recipe.faceUp, show: { otherUnit: false } };
      const flat = card.joins ? '' : picture(svgOf(drawNetToFit(card.piece, PHONE.space, look)));
      return `<h2>${escapeXml(cards.length > 1 ? `Steps: ${card.piece.label}` : 'Steps')}</h2>${flat}<ol>${steps.join('')}</ol>`;
    }),
    ...dressingLists({ net, dressings: recipe.dressings, mark: ruler.finest }, ruler).map(
      ({ head, rows }) => `<h2>${escapeXml(head)}</h2>${table(DRESSING_HEADS, rows)}`,
    ),
    ...looksOf(input).map(({ head, steps }) => {
      const items = steps.map(
        ({ says, picture: after }) =>
          `<li><h3>${escapeXml(setFractions(says))}</h3>${after ? picture(svgOf(after)) : ''}</li>`,
      );
      return `<h2>${escapeXml(head)}</h2><ol>${items.join('')}</ol>`;
    }),
    list(
      'What goes inside',
      content.inside.map(({ name, count }) => `${count} × ${name}`),
    ),
    list('Take care', content.cautions),
    list('Try it another way', content.variations),
    list(KEPT_HEAD, content.kept),
    content.credits === '' ? '' : `<h2>Thanks to</h2><p>${escapeXml(content.credits)}</p>`,
    !link ? '' : `<p><a href="${escapeXml(link)}">Open this box</a></p>`,
    '</main></body></html>\n',
  ].join('\n');
}

/** One step: what is done, the marks it is done at, why, what to heed, and its picture. */
function stepItem(
  { headline, marks, details, template }: CardStep,
  ruler: Ruler,
  beside: {
    readonly cautions: readonly CautionCode[];
    readonly notes: readonly string[];
    readonly picture: string;
  },
): string {
  const said = (className: string, lines: readonly string[]) =>
    lines.map((line) => `<p class="${className}">${escapeXml(setFractions(line))}</p>`).join('');
  const distances = marks.map(({ at, reads }) => {
    const { number, below } = lengthText(at, ruler);
    return `<li><b>${escapeXml(number)}</b> <small>${escapeXml(below)}, ${escapeXml(reads)}</small></li>`;
  });
  return [
    `<li><h3>${escapeXml(setFractions(headline))}</h3>`,
    distances.length > 0 ? `<ul class="marks">${distances.join('')}</ul>` : '',
    said('detail', details),
    said('note', beside.notes),
    said(
      'care',
      beside.cautions.map((code) => CAUTIONS[code]),
    ),
    template.length > 0
      ? `<details><summary>Every point of the curves, for those without the template</summary>${said('point', template)}</details>`
      : '',
    beside.picture,
    '</li>',
  ].join('');
}
