import type { BoxNet, PieceNet } from '../../net/types';
import {
  evaluateForm,
  expandForm,
  formOf,
  type LinearForm,
  printForm,
} from '../../styles/language/linear-form';
import type { BoxStyle, Len } from '../../styles/language/types';
import { piecesOf } from '../../styles/shapes/choices';
import type { Ticks } from '../../units';
import { addUp, type Fact, type Reason, reason } from '../../units/reason';
import { panelLabels } from './panel-labels';
import { panelsAcross, type Stretch } from './panels-across';

/** A line of the net as the table beside the drawing has it: ticks from the left and the top edge of the card as it lies. */
export interface TabledLine {
  readonly ink: string;
  readonly way: 'upright' | 'level' | 'slanted' | 'curved';
  readonly fromLeft: readonly [Ticks, Ticks];
  readonly fromTop: readonly [Ticks, Ticks];
  readonly length: Ticks;
  readonly rise: Ticks | null;
}

interface Card {
  readonly net: BoxNet;
  readonly piece: PieceNet;
  readonly style: BoxStyle;
  readonly faceUp: 'inside' | 'outside';
}

const length = (of: Ticks) => ({ length: of });

/** Where a line's distance comes from: the panels from the edge to it, added up, and each panel from the sizes the maker gave. */
export function whyLine(line: TabledLine, card: Card): readonly Reason[] {
  const { blank } = card.piece;
  if (line.ink === 'edge')
    return [
      reason('The edge of the card, which is cut {across} × {up} before anything else.', {
        across: length(blank.across),
        up: length(blank.up),
      }),
    ];
  if (line.way === 'slanted' || line.way === 'curved') return [byItsEnds(line)];
  const level = line.way === 'level';
  const at = level ? line.fromTop[0] : line.fromLeft[0];
  const [from, to] = level ? line.fromLeft : line.fromTop;
  const across = panelsAcross(card.piece, { level, at, from, to, faceUp: card.faceUp });
  if (!across) return [reason(level ? '{at} from the top.' : '{at} from the left.', { at: length(at) })];
  const labels = panelLabels(card.piece);
  const named = (panel: string) => labels.get(panel) ?? panel;
  return [
    ...betweenWhich(across.before.at(-1), across.after, named),
    addedUp(across.before, at, level, named),
    ...howLong(across.before, level, card, named),
  ];
}

const byItsEnds = ({ way, fromLeft, fromTop, length: long, rise }: TabledLine): Reason =>
  reason(
    way === 'curved'
      ? 'Found by its two ends: {left} from the left and {top} from the top, {left2} and {top2}. {long} long, {rise} off the straight line between them.'
      : 'Found by its two ends: {left} from the left and {top} from the top, {left2} and {top2}. {long} long.',
    {
      left: length(fromLeft[0]),
      top: length(fromTop[0]),
      left2: length(fromLeft[1]),
      top2: length(fromTop[1]),
      long: length(long),
      ...(rise === null ? {} : { rise: length(rise) }),
    },
  );

function betweenWhich(
  before: Stretch | undefined,
  after: string | null,
  named: (panel: string) => string,
): Reason[] {
  const one = before?.panel ?? null;
  if (one !== null && one === after) return [reason('Within the {panel}.', { panel: named(one) })];
  if (one !== null && after !== null)
    return [reason('Between the {one} and the {after}.', { one: named(one), after: named(after) })];
  const only = one ?? after;
  return only === null ? [] : [reason('The free edge of the {panel}.', { panel: named(only) })];
}

function addedUp(
  before: readonly Stretch[],
  at: Ticks,
  level: boolean,
  named: (panel: string) => string,
): Reason {
  const says = level ? FROM_TOP : FROM_LEFT;
  if (before.length === 0) return reason(says.edge, {});
  const parts = before.map(({ panel, length: long }) =>
    panel === null
      ? reason('what falls away {long}', { long: length(long) })
      : reason('the {panel} {long}', { panel: named(panel), long: length(long) }),
  );
  const sum = addUp(parts);
  return reason(before.length === 1 ? says.one : says.sum, { sum, at: length(at) });
}

const FROM_TOP = {
  edge: 'On the top edge of the card, which is measured from.',
  one: 'From the top: {sum}.',
  sum: 'From the top: {sum} = {at}.',
};
const FROM_LEFT = {
  edge: 'On the left edge of the card, which is measured from.',
  one: 'From the left: {sum}.',
  sum: 'From the left: {sum} = {at}.',
};

/** Each panel that was added, by the sizes of its style; only where they give exactly what was added. */
function howLong(
  before: readonly Stretch[],
  level: boolean,
  { net, piece, style }: Card,
  named: (panel: string) => string,
): Reason[] {
  const panels = piecesOf(style, net.options)[piece.id]?.panels ?? {};
  const said = new Set<string>();
  return before.flatMap(({ panel, length: long }) => {
    const spec = panel === null ? undefined : panels[panel];
    if (panel === null || said.has(panel) || spec === undefined || !('size' in spec)) return [];
    said.add(panel);
    const form = formIn(spec.size[level ? 1 : 0], net, style);
    if (evaluateForm(form, net.values) !== long) return [];
    return [fromSizes(named(panel), long, form, net, style)];
  });
}

/** A form in the maker's own sizes; what comes to nothing at these sizes is left out. */
function formIn(text: Len, net: BoxNet, style: BoxStyle): LinearForm {
  const form = expandForm(formOf(text), style.lets ?? {});
  return { ...form, terms: form.terms.filter(({ name }) => net.values[name] !== 0) };
}

function fromSizes(panel: string, long: Ticks, form: LinearForm, net: BoxNet, style: BoxStyle): Reason {
  const facts: Record<string, Fact> = {};
  const fact = (of: Fact) => {
    const name = `f${Object.keys(facts).length}`;
    facts[name] = of;
    return `{${name}}`;
  };
  const size = (name: string) =>
    reason('{size} {long}', { size: sizeLabel(name, style), long: length(net.values[name] ?? (0 as Ticks)) });
  const says = printForm(form, (name) => fact(size(name)), fact);
  const [only, ...others] = form.terms;
  const plain = others.length === 0 && form.constant === 0 && only?.times === form.over;
  return reason(plain ? 'The {panel}: {sum}.' : 'The {panel}: {sum} = {long}.', {
    panel,
    sum: { says, facts },
    long: length(long),
  });
}

/** What a name of a style's forms is called: `t` is the card's thickness. */
function sizeLabel(name: string, style: BoxStyle): string {
  if (name === 't') return 'thickness of the card';
  if (name in (style.allowances ?? {})) return 'allowance';
  // What a quantity means is said before the colon or comma; why it is so, after.
  const label = style.symbols[name]?.label ?? style.quantities?.[name]?.means.split(/[:,]/)[0];
  return label?.toLowerCase() ?? name.replace(/(?<=.)([A-Z])/g, ' $1').toLowerCase();
}
