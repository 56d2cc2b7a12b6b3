import { turnedPrint } from '../../dress';
import { panelWords } from '../../net/panel-words';
import type { Paper } from '../../rows';
import type { EventBox } from './event-boxes';
import type { EventFinding } from './types';

/** Boxes from paper printed one way, on whose panels the print does not stand as on the front. */
export const findTurnedPrint = (
  boxes: readonly EventBox[],
  papers: readonly Paper[],
): readonly EventFinding[] =>
  boxes.flatMap(({ line, recipe, net, paperId }): EventFinding[] => {
    const paper = papers.find(({ id, oneWay }) => id === paperId && oneWay);
    if (!paper) return [];
    const turned = turnedPrint(net);
    const named = (lies: 'upside-down' | 'sideways') =>
      turned.filter((each) => each.lies === lies).map(({ panel }) => panelWords(panel));
    const ways = [
      [named('upside-down'), 'The print of {paper} stands upside down here: {panels}.'],
      [named('sideways'), 'The print of {paper} lies sideways here: {panels}.'],
    ] as const;
    return ways
      .filter(([panels]) => panels.length > 0)
      .map(([panels, says]) => ({
        code: 'print-turned',
        severity: 'note',
        where: line.id,
        about: recipe.name,
        says,
        facts: { paper: { text: paper.name }, panels },
        remedy: 'Cover these panels with layers, or choose a paper that looks right either way.',
      }));
  });
