import { everyAddOn, everyChoice, piecesOf } from '../shapes/choices';
import { busyEdges, cutFault, cutsOf, edgesOf } from './cut-edges';
import { bothEnds, UNCHECKED, WHOLE } from './define';
import { formOf } from './linear-form';
import { StyleError } from './style-error';
import type { BoxStyle, Len, PanelSpec, PieceSpec, Pieces } from './types';

/** Checks a declared style before anything is laid by it, once. Throws StyleError where a name or a linear form is wrong: a slip of who declared it. */
export function checkOnce(style: BoxStyle): void {
  if (!UNCHECKED.has(style)) return;
  checkStyle(style);
  UNCHECKED.delete(style);
}

/** Reads every linear form once and checks every name, for every choice of the options and each add-on by itself. */
function checkStyle(style: BoxStyle): void {
  const slip = (what: string): never => {
    throw new StyleError(style.id, what);
  };
  if (!/^[a-z][a-z0-9-]*$/.test(style.id)) slip('an id is lower case letters, digits and dashes');
  const lengths = checkLengths(style, slip);
  const form = (text: Len, where: string) => checkForm(text, where, lengths, slip);
  for (const [name, text] of named(style.inside, ['inside width', 'inside depth', 'inside height']))
    form(text, name);
  for (const chosen of [...everyChoice(style), ...everyAddOn(style)]) {
    const pieces: Pieces = {
      ...piecesOf(style, chosen),
      ...(style.whole === undefined ? {} : { [WHOLE]: style.whole }),
    };
    for (const [id, piece] of Object.entries(pieces)) checkPiece(id, piece, style, form, slip);
    for (const promise of style.promises) {
      if (promise.claim === 'covers') {
        const piece = pieces[promise.piece] ?? slip(`a promise names the piece ${promise.piece}`);
        for (const panel of promise.panels)
          if (!(panel in piece.panels)) slip(`a promise names the panel ${panel}`);
        for (const text of promise.area) form(text, 'a promised area');
      } else {
        for (const piece of [promise.inner, promise.outer])
          if (!(piece in pieces)) slip(`a promise names the piece ${piece}`);
        for (const text of promise.gap) form(text, 'a promised gap');
      }
    }
  }
  for (const bound of style.constraints) {
    if (!(bound.symbol in style.symbols)) slip(`${bound.code} bounds ${bound.symbol}, which is no symbol`);
    if ((bound.atLeast === undefined) === (bound.atMost === undefined))
      slip(`${bound.code} needs one bound: atLeast or atMost`);
    for (const text of [bound.atLeast, bound.atMost, ...Object.values(bound.facts ?? {})])
      if (text !== undefined) form(text, bound.code);
    const known = new Set([...lengths, ...Object.keys(bound.facts ?? {}), 'limit']);
    for (const [, slot = ''] of `${bound.says} ${bound.remedy}`.matchAll(/\{(\w+)\}/g))
      if (!known.has(slot)) slip(`${bound.code} prints {${slot}}, which has no value`);
  }
  for (const { what, room, body, card, ease, saidBy } of style.fits ?? []) {
    for (const text of [room, body, card, ease]) form(text, what);
    if (saidBy !== undefined && !style.constraints.some(({ code }) => code === saidBy))
      slip(`the fit '${what}' is said by ${saidBy}, which is no limit`);
  }
}

type Slip = (what: string) => never;

/** Names of all lengths, each checked to be made of the names before it only. */
function checkLengths(style: BoxStyle, slip: Slip): Set<string> {
  const known = new Set<string>();
  const take = (name: string) => {
    if (!/^[a-z][a-zA-Z0-9]*$/.test(name) || name === 'in' || name === 'mm')
      slip(`${name} cannot be the name of a length`);
    if (known.has(name) || (name === 't' && known.size > 0)) slip(`${name} is declared twice`);
    known.add(name);
  };
  for (const [name, symbol] of Object.entries(style.symbols)) {
    for (const usual of [symbol.default, symbol.forNew])
      if (usual !== undefined) checkForm(usual, `${name}'s default`, known, slip);
    for (const text of [symbol.min, symbol.max]) checkForm(text, `${name}'s limit`, new Set(), slip);
    take(name);
  }
  known.add('t');
  for (const [name, text] of Object.entries(style.allowances ?? {})) {
    checkForm(text, name, known, slip);
    take(name);
  }
  for (const [name, text] of Object.entries(style.lets ?? {})) {
    checkForm(text, name, known, slip);
    take(name);
  }
  for (const name of Object.keys(style.quantities ?? {})) take(name);
  return known;
}

function checkForm(text: Len, where: string, known: ReadonlySet<string>, slip: Slip): void {
  try {
    for (const { name } of formOf(text).terms)
      if (!known.has(name)) slip(`${where}: '${text}' asks for ${name}`);
  } catch (error) {
    if (error instanceof RangeError) slip(`${where}: ${error.message}`);
    throw error;
  }
}

function checkPiece(
  id: string,
  piece: PieceSpec,
  style: BoxStyle,
  form: (text: Len, where: string) => void,
  slip: Slip,
): void {
  const panel = (name: string): PanelSpec => piece.panels[name] ?? slip(`${id} has no panel ${name}`);
  const edge = (where: string) => {
    const [name = '', side = ''] = where.split('.');
    if (!edgesOf(panel(name)).includes(side)) slip(`${id} has no edge ${where}`);
  };
  const earlier = new Set<string>();
  for (const [name, spec] of Object.entries(piece.panels)) {
    if ((spec.on === undefined) !== (earlier.size === 0))
      slip(`${id}.${name}: the first panel, and only it, hangs on nothing`);
    if (spec.on !== undefined) {
      edge(spec.on);
      if (!earlier.has(spec.on.split('.')[0] ?? '')) slip(`${id}.${name} hangs on a panel declared after it`);
    }
    if (typeof spec.fold === 'string' && !(spec.fold in (style.angles ?? {})))
      slip(`${id}.${name}: no angle is called ${spec.fold}`);
    for (const text of panelForms(spec)) form(text, `${id}.${name}`);
    if ('notches' in spec)
      for (const { edge: side } of spec.notches ?? [])
        if (busyEdges(piece).has(`${name}.${side}`))
          slip(`${id}.${name}: a notch in ${side}, which carries a panel`);
    const fault = cutFault(piece, name, spec);
    if (fault !== null) slip(`${id}.${name}: ${fault}`);
    if (
      'size' in spec &&
      ('holes' in spec || 'notches' in spec || 'cuts' in spec) &&
      (spec.bow !== undefined || spec.follows !== undefined)
    )
      slip(`${id}.${name}: holes or cuts in a panel that bends`);
    if ('follows' in spec && !(('size' in spec ? 'bow' : 'sector') in panel(spec.follows)))
      slip(`${id}.${name} follows a flat panel`);
    if ('sector' in spec && typeof spec.turn === 'string' && !(spec.turn in (style.angles ?? {})))
      slip(`${id}.${name}: no angle is called ${spec.turn}`);
    earlier.add(name);
  }
  for (const joint of piece.joints) {
    panel(joint.panel);
    panel(joint.onto);
    for (const text of [joint.gap, joint.when, joint.unless])
      if (text !== undefined) form(text, `${id}: the joint of ${joint.panel}`);
  }
  for (const [a, b, gap] of piece.seams ?? []) {
    edge(a);
    edge(b);
    if (gap !== undefined) form(gap, `${id}: the gap of ${a}`);
  }
  for (const crease of piece.creases ?? []) {
    for (const where of crease.between) edge(where);
    if (typeof crease.fold === 'string' && !(crease.fold in (style.angles ?? {})))
      slip(`${id}: no angle is called ${crease.fold}`);
  }
  for (const name of [...(piece.overlaps ?? []).flat(), ...piece.shell]) panel(name);
  for (const ring of piece.rings ?? []) {
    if (ring.length < 3) slip(`${id}: a ring of ${ring.length} leaves`);
    for (const name of ring) if (!('leaf' in panel(name))) slip(`${id}: ${name} in a ring is no leaf`);
  }
  for (const step of piece.closing) {
    if (step.do !== 'glue') for (const name of step.panels) panel(name);
    else if (!piece.joints.some((joint) => joint.panel === step.panel && joint.onto === step.onto))
      slip(`${id} glues ${step.panel} onto ${step.onto} without a joint`);
  }
}

const holeForms = (spec: PanelSpec): readonly Len[] => [
  ...('notches' in spec ? (spec.notches ?? []).map(({ radius }) => radius) : []),
  ...cutsOf(spec).map(({ size }) => size),
  ...('holes' in spec ? (spec.holes ?? []) : []).flatMap((hole) =>
    hole.hole === 'window'
      ? [hole.margin]
      : [
          ...(hole.hole === 'round' ? [hole.across] : hole.hole === 'slit' ? [hole.long] : hole.size),
          ...(hole.at ?? []),
        ],
  ),
];

function panelForms(spec: PanelSpec): Len[] {
  const own = 'size' in spec ? [...spec.size, ...bothEnds(spec.taper), ...(spec.bow ? [spec.bow] : [])] : [];
  const outline = 'outline' in spec ? [...spec.outline.flat(), ...(spec.hinge ? [spec.hinge] : [])] : [];
  return [
    ...holeForms(spec),
    ...own,
    ...outline,
    ...('lens' in spec ? [spec.lens] : []),
    ...('leaf' in spec ? [spec.leaf] : []),
    ...('sector' in spec ? [spec.sector] : []),
    ...('regular' in spec ? [spec.side] : []),
    ...(spec.at ? [spec.at] : []),
  ];
}

const named = <T>(items: readonly T[], names: readonly string[]) =>
  items.map((item, at) => [names[at] ?? '', item] as const);
