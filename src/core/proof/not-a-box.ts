import { checkFlatOverlap } from '../checks/check-flat-overlap';
import { checkPanelShape } from '../checks/check-panel-shape';
import { panelWords } from '../checks/finding';
import { fillSizes, layNet, nameValues } from '../net';
import type { StyleRefusal } from '../style-file/style-refusal';
import { type BoxStyle, evaluateForm, formOf, piecesOf } from '../styles';
import type { Len, PanelSpec } from '../styles/language/types';
import { inches, type Ticks, ticks } from '../units/ticks';
import { swayFrom } from '../yield/stock/sway';
import { type AskedBox, legalBoxes, mendSizes } from './legal-boxes';

/** How many boxes within its limits are looked at, and how many of them are laid. source: our own, a tenth of a second for the largest style here */
const LOOKED_AT = 24;
const LAID = 4;

/**
 * Why a style that was read is no box at all: limits that let no size in, a panel whose length can be nothing or less, panels that lie on one
 * another in the flat. Each names the panel, its numbers and what to change. Whether it closes is asked of `proveStyle`.
 */
export function notABox(style: BoxStyle): readonly StyleRefusal[] {
  const boxes = [...legalBoxes(style, LOOKED_AT, swayFrom(1)), ...extremes(style)];
  const [usual] = boxes;
  if (usual === undefined)
    return [
      {
        code: 'no-legal-size',
        path: 'constraints',
        facts: {},
        says: 'No box within its limits was found.',
        remedy: 'Start from sizes that fold, and set the limits around them.',
      },
    ];
  const nothing = lengthsOfNothing(style, boxes);
  if (nothing.length > 0) return nothing;
  return boxes
    .slice(0, LAID)
    .flatMap((box) => flatFaults(style, box))
    .slice(0, 1);
}

/** Every size at its least and at its most, the others as usual, then all of them together; each brought within the limits. */
function extremes(style: BoxStyle): readonly AskedBox[] {
  const usual = fillSizes(style);
  const at = (end: 'min' | 'max', only?: string): AskedBox => ({
    sizes: Object.fromEntries(
      Object.entries(style.symbols).map(([name, spec]): [string, Ticks] => [
        name,
        only === undefined || only === name
          ? evaluateForm(formOf(spec[end]), {})
          : (usual[name] ?? evaluateForm(formOf(spec.min), {})),
      ]),
    ),
    options: {},
    caliperUm: 305,
    mark: inches(0, 1, 16),
  });
  const names = Object.keys(style.symbols);
  return [at('min'), at('max'), ...names.flatMap((name) => [at('min', name), at('max', name)])].flatMap(
    (box) => mendSizes(style, box) ?? [],
  );
}

/** What a panel may not be nothing in: both ways of a rectangle, the hinge of an outline, the side of a polygon. */
const lengthsOf = (panel: PanelSpec): readonly Len[] =>
  'size' in panel
    ? panel.size
    : 'outline' in panel
      ? panel.hinge === undefined
        ? []
        : [panel.hinge]
      : 'regular' in panel
        ? [panel.side]
        : 'leaf' in panel
          ? [panel.leaf]
          : 'sector' in panel
            ? [panel.sector]
            : [];

/** Lengths of panels that are 0 or less in one of these boxes, which keep the limits of the style. */
function lengthsOfNothing(style: BoxStyle, boxes: readonly AskedBox[]): readonly StyleRefusal[] {
  const found = new Map<string, StyleRefusal>();
  for (const box of boxes) {
    const { lengths } = nameValues(style, box);
    for (const [piece, { panels }] of Object.entries(piecesOf(style, box.options)))
      for (const [panel, spec] of Object.entries(panels))
        for (const form of lengthsOf(spec)) {
          const length = evaluateForm(formOf(form), lengths);
          if (length > 0 || found.has(panel)) continue;
          found.set(panel, {
            code: 'length-of-nothing',
            path: `${piece}.${panel}`,
            facts: {
              panel: panelWords(panel),
              form: { text: form },
              length: ticks(length),
              sizes: Object.keys(style.symbols).map((name) => ({
                says: '{name} {size}',
                facts: { name: { text: name }, size: box.sizes[name] ?? ticks(0) },
              })),
            },
            says: 'The {panel} is {form} long, which is {length} at {sizes}.',
            remedy: 'Raise a smallest size, or add a limit that keeps it above nothing.',
          });
        }
  }
  return [...found.values()];
}

const flatFaults = (style: BoxStyle, box: AskedBox): readonly StyleRefusal[] =>
  layNet(style, box).pieces.flatMap((piece) =>
    [...checkPanelShape(piece), ...checkFlatOverlap(piece)].map(({ code, where, says, facts, remedy }) => ({
      code,
      path: `${piece.id}.${where}`,
      says,
      facts,
      remedy,
    })),
  );
