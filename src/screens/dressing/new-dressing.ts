import type { Counted, Dressing, DressingPiece, Recipe, Supply, Tie } from '../../../shared/workbook';
import { withCells } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import { panelWords } from '../../core/net/panel-words';
import { savedName } from '../../core/net/saved-panel';
import { mmOfTicks } from '../../core/rows/lengths';
import { inches, type LengthUnit, markBelow, millimetres, ticks } from '../../core/units';
import type { NewDressing } from '../../ui/words/english/dressing';
import type { Say } from '../../ui/words/spoken';

/** A length in the maker's own unit: so many sixteenths of an inch, or so many millimeters. */
const usual = (unit: LengthUnit, sixteenths: number, mm: number): number =>
  mmOfTicks(unit === 'in' ? inches(0, sixteenths, 16) : millimetres(mm));

/** `tag`, `tag-2`, …: the first that is free. */
function freshId(base: string, taken: readonly { readonly id: string }[]): string {
  for (let number = 1; ; number++) {
    const id = number === 1 ? base : `${base}-${number}`;
    if (taken.every((each) => each.id !== id)) return id;
  }
}

/** A panel of one piece of the box, `panel` as it is saved. `key` names both, for a list of choices. */
export interface VisiblePanel {
  readonly key: string;
  readonly part: string;
  readonly panel: string;
  readonly label: string;
}

const HIDDEN = ['glueTab', 'bottomFlap', 'dustFlap', 'lockFlap', 'liner'];

/** Panels that are seen on the closed box, piece by piece, the walls first; the piece is said where there are several. */
export function visiblePanels(net: BoxNet, say: Say = String): readonly VisiblePanel[] {
  const { pieces } = net;
  return pieces.flatMap(({ id, label, faces }) => {
    const seen = faces.filter(({ role }) => !HIDDEN.includes(role));
    const walls = seen.filter(({ role }) => role === 'wall');
    return [...new Set([...walls, ...seen].map(({ panel }) => panel))].map((name) => {
      const panel = savedName(net, id, name);
      const words = say(panelWords(name));
      return {
        key: panelKey({ panel, part: id }),
        part: id,
        panel,
        label: pieces.length > 1 ? `${say(label)}: ${words}` : words,
      };
    });
  });
}

export const panelKey = ({ panel, part }: { readonly panel: string; readonly part?: string | undefined }) =>
  `${part ?? ''}/${panel}`;

/** A saved panel as one of those that are there; where no piece is said, the first that has it. */
export const findPanel = (
  panels: readonly VisiblePanel[],
  { panel, part }: { readonly panel: string; readonly part?: string | undefined },
): VisiblePanel | undefined =>
  panels.find((each) => each.panel === panel && (part === undefined || each.part === part));

export interface Beginning {
  readonly net: BoxNet;
  readonly unit: LengthUnit;
  readonly supplies: readonly Supply[];
  readonly name: string;
  /** What the two families of dividers are called, and into how many cells they part the box. */
  readonly dividers: {
    readonly names: Readonly<Record<'across' | 'deep', string>>;
    readonly columns: number;
    readonly rows: number;
  };
}

/** A dressing with one more thing on it, at the sizes that are usual. source: common practice, no source. */
export function putOn(dressing: Dressing, what: NewDressing, beginning: Beginning): Dressing {
  const { name, supplies } = beginning;
  const ties = dressing.ties ?? [];
  const counted = dressing.counted ?? [];
  const supplyOf = (...kinds: readonly Supply['kind'][]) =>
    kinds.flatMap((kind) => supplies.find((supply) => supply.kind === kind) ?? []).at(0)?.id ?? null;
  const count = (kind: Supply['kind'], perBox: number): Dressing => {
    const fresh: Counted = { id: freshId(what, counted), name, supplyId: supplyOf(kind), perBox };
    return { ...dressing, counted: [...counted, fresh] };
  };
  switch (what) {
    case 'seal':
    case 'clip':
      return count('closure', 1);
    case 'mount':
      return count('mount', 2);
    case 'gift':
      return count('contents', 1);
    case 'cross':
      return {
        ...dressing,
        ties: [...ties, newTie(freshId(what, ties), what, supplyOf('ribbon', 'twine'), beginning)],
      };
    case 'ring':
      return {
        ...dressing,
        ties: [...ties, newTie(freshId(what, ties), what, supplyOf('twine', 'ribbon'), beginning)],
      };
    case 'dividers':
      return putDividers(dressing, beginning);
    default:
      return {
        ...dressing,
        pieces: [...dressing.pieces, newPiece(freshId(what, dressing.pieces), what, beginning)],
      };
  }
}

/** Strips both ways, as high as half of the room. */
function putDividers(dressing: Dressing, { net, unit, dividers }: Beginning): Dressing {
  const { names, columns, rows } = dividers;
  const mark = unit === 'in' ? inches(0, 1, 4) : millimetres(5);
  const high = markBelow(ticks(Math.max(mark, Math.floor(net.inside.height / 2))), mark);
  const heightMm = mmOfTicks(high);
  const others = dressing.pieces.filter(({ fit }) => fit?.rule !== 'divides');
  const pieces = (['across', 'deep'] as const).map(
    (runs): DressingPiece => ({
      id: freshId(`divider-${runs}`, others),
      kind: 'divider',
      name: names[runs],
      widthMm: usual(unit, 48, 75),
      heightMm,
      perBox: 1,
      grain: 'free',
      paperId: null,
      fit: { rule: 'divides', runs, columns, rows, heightMm, easeMm: usual(unit, 1, 1) },
    }),
  );
  return withCells({ ...dressing, pieces: [...others, ...pieces] }, {});
}

function newTie(id: string, wrap: 'cross' | 'ring', supplyId: string | null, { name, unit }: Beginning): Tie {
  const bow = {
    loops: 2,
    loopMm: usual(unit, 32, 50),
    tailMm: usual(unit, 40, 65),
    knotMm: usual(unit, 24, 40),
  };
  return { id, name, supplyId, wrap, bow, perBox: 1 };
}

function newPiece(
  id: string,
  kind: Exclude<DressingPiece['kind'], 'divider'>,
  { name, unit, net }: Beginning,
): DressingPiece {
  const panels = visiblePanels(net);
  const front = panels.find(({ panel }) => panel === 'front') ?? panels[0];
  const panel = front?.panel ?? 'front';
  const windowed = net.pieces.flatMap(({ id, faces }) =>
    faces
      .filter(({ holes }) => holes.length > 0)
      .map((face) => ({ panel: savedName(net, id, face.panel), part: id })),
  )[0];
  const size = { widthMm: usual(unit, 16, 25), heightMm: usual(unit, 40, 65) };
  const plain = { id, kind, name, ...size, perBox: 1, grain: 'free', paperId: null } as const;
  switch (kind) {
    case 'liner':
      return {
        ...plain,
        fit: { rule: 'behind', aboveRimMm: usual(unit, 48, 75), easeMm: usual(unit, 1, 1) },
      };
    case 'layer':
      return { ...plain, fit: { rule: 'on-panel', panel, revealMm: usual(unit, 2, 3) } };
    case 'band':
      return {
        ...plain,
        fit: { rule: 'around', heightMm: usual(unit, 16, 25), lapMm: usual(unit, 8, 12) },
      };
    case 'window':
      return { ...plain, fit: { rule: 'over-window', panel, ...windowed, lapMm: usual(unit, 4, 6) } };
    case 'tag':
      return { ...plain, shape: 'banner' };
    case 'raised-floor':
      return {
        ...plain,
        fit: {
          rule: 'on-floor',
          easeMm: usual(unit, 1, 1),
          riseMm: usual(unit, 12, 20),
          holes: { shape: 'round', acrossMm: usual(unit, 12, 20), columns: 1, rows: 1 },
        },
      };
    case 'cushion':
      return { ...plain, fit: { rule: 'on-floor', easeMm: usual(unit, 1, 1), riseMm: 0 } };
  }
}

/** One more layer on a layer: as much reveal again on every side. */
export function layerOnLayer(dressing: Dressing, { id, ...piece }: DressingPiece): Dressing {
  const { fit } = piece;
  if (fit?.rule !== 'on-panel') return dressing;
  const first = dressing.pieces.find(
    (each) => each.fit?.rule === 'on-panel' && panelKey(each.fit) === panelKey(fit),
  )?.fit;
  const step = first?.rule === 'on-panel' ? first.revealMm : fit.revealMm;
  const more = (mm: number): number => Math.min(2000, mm + step);
  const sides = fit.sidesMm;
  const next = {
    ...piece,
    id: freshId(id.replace(/-\d+$/, ''), dressing.pieces),
    fit: {
      ...fit,
      revealMm: more(fit.revealMm),
      ...(sides && {
        sidesMm: {
          left: more(sides.left),
          right: more(sides.right),
          up: more(sides.up),
          down: more(sides.down),
        },
      }),
    },
  };
  const at = dressing.pieces.findIndex((each) => each.id === id) + 1;
  return { ...dressing, pieces: dressing.pieces.toSpliced(at, 0, next) };
}

/** A recipe with one more dressing, empty or a copy. */
export const addDressing = (recipe: Recipe, name: string, of?: Dressing): Recipe => ({
  ...recipe,
  dressings: [...recipe.dressings, { pieces: [], ...of, id: freshId('dressing', recipe.dressings), name }],
});
