import { type ActHits, followClosing } from '../fold';
import { asItStands } from '../net/lay-net';
import type { BoxNet, PieceNet } from '../net/types';
import { checkClosingProgram } from './check-closing-program';
import { checkLapOrder } from './check-lap-order';
import { asTicks, type Finding, panelWords, wordsOf } from './finding';

/**
 * Panels that run into each other on the way, act by act in the declared order, and layers that this order cannot give. Slower than the
 * other checks, so called by itself. What springs (the ends of a pillow) is not followed: `closingNotFollowed` names it.
 */
export const checkClosingPath = (box: BoxNet): Finding[] => [
  ...[...box.pieces, ...(box.whole === undefined ? [] : [box.whole])].flatMap((piece) => [
    ...followClosing(piece, box.caliperUm / 1000).met.flatMap((met) => tellHits(piece, met)),
    ...checkLapOrder(piece),
  ]),
  ...asItStands(box).flatMap((piece) =>
    checkClosingProgram(piece).filter(({ code }) => code !== 'fold-left-out' || !isPart(box, piece)),
  ),
];

/** The acts of closing that the path check cannot follow, as the panels they move. */
export const closingNotFollowed = (box: BoxNet): readonly (readonly string[])[] =>
  box.pieces.flatMap((piece) =>
    followClosing(piece, box.caliperUm / 1000).notFollowed.flatMap((at) => {
      const act = piece.closing[at];
      return act === undefined || act.do === 'glue' ? [] : [act.panels];
    }),
  );

function tellHits(piece: PieceNet, { act, hits }: ActHits): readonly Finding[] {
  const told = new Map<string, Finding>();
  for (const hit of hits) {
    const [one, other] = [wordsOf(piece, hit.one), wordsOf(piece, hit.other)];
    const pair = `${one}, ${other}`;
    if (told.has(pair)) continue;
    told.set(pair, {
      code: 'panels-collide-closing',
      severity: 'stop',
      where: piece.faces[hit.other]?.panel ?? '',
      facts: { panels: act.panels.map(panelWords), one, other, deep: asTicks(hit.depth) },
      says: 'When the {panels} fold, the {one} and the {other} hit each other by {deep}.',
      remedy: 'Make one of them shorter, or change the order of folding.',
    });
  }
  return [...told.values()];
}

/** One of several pieces that closes around nothing by itself may be glued to another before its last folds; a file does not say so. */
const isPart = ({ pieces, whole }: BoxNet, { shell }: PieceNet): boolean =>
  pieces.length > 1 && whole === undefined && shell.length === 0;
