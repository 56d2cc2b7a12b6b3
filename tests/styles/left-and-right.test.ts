import { Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { layNet, type PieceNet } from '../../src/core/net';
import { panelWords } from '../../src/core/net/panel-words';
import { everyChoice, STYLES } from '../../src/core/styles';
import { pointOn, standsOf } from '../solid/places';

/**
 * Left and right as whoever holds the box means them: its front faces him, and he looks at it from outside. The closed box is built by
 * another library's turns (npm `three`), with nothing of `core/fold`. His right hand is up × out of the front.
 */
interface View {
  readonly up: Vector3;
  readonly right: Vector3;
}

/** What a box rests on, and which panel of it faces whoever holds it. Pieces without a floor or front stand as their net lies, foot towards him. */
function viewOf(piece: PieceNet, inside: readonly Vector3[]): View {
  const find = (is: (face: PieceNet['faces'][number]) => boolean) => inside[piece.faces.findIndex(is)];
  const floor =
    find(({ role, panel }) => role === 'base' || panel === 'bottom') ??
    find(({ role }) => role === 'bottomFlap') ??
    find(({ panel }) => panel === 'bottomLid');
  // a slice has a back and no front; a bar lies with its near end to the hand
  const front =
    find(({ panel }) => panel === 'front' || panel === 'near')
      ?.clone()
      .negate() ?? find(({ panel }) => panel === 'back');
  const stands = floor?.clone().multiplyScalar(piece.lid ? -1 : 1);
  if (front === undefined) {
    const up = stands ?? new Vector3(0, 0, 1);
    return { up, right: up.clone().cross(new Vector3(0, -1, 0)) };
  }
  // a flat box, wrapper or envelope is held with its front to the eye and the top of its net up
  const up = stands && Math.abs(stands.dot(front)) < 0.5 ? stands : new Vector3(0, 1, 0);
  return { up, right: up.clone().cross(front) };
}

const SIDE = /\b(left|right)\b/;

/** Panels whose words say a side on which they do not lie, and by how much, mm. */
function liesElsewhere(piece: PieceNet): readonly string[] {
  const stands = standsOf(piece);
  const { right } = viewOf(
    piece,
    stands.map(({ inside }) => inside),
  );
  const over = piece.faces.map(({ ring }, at) =>
    ring.map((corner) => pointOn(stands[at]!, corner).dot(right)),
  );
  const all = over.flat();
  const middle = (Math.min(...all) + Math.max(...all)) / 2;
  return piece.faces.flatMap(({ panel }, at) => {
    const said = SIDE.exec(panelWords(panel))?.[1];
    if (said === undefined) return [];
    const beside = over[at]!.reduce((sum, x) => sum + x, 0) / over[at]!.length - middle;
    return (said === 'right' ? beside : -beside) > 1 ? [] : [`${panelWords(panel)} ${beside.toFixed(1)}`];
  });
}

describe.each(STYLES.map((style) => [style.id, style] as const))('left and right of %s', (_, style) => {
  it('are those of whoever looks at its front from outside', () => {
    for (const options of everyChoice(style)) {
      const net = layNet(style, { sizes: {}, options, caliperUm: 300 });
      // a piece that is one half of a box is looked at as part of it
      for (const piece of net.whole ? [net.whole] : net.pieces)
        expect({ piece: piece.id, options, elsewhere: liesElsewhere(piece) }).toEqual({
          piece: piece.id,
          options,
          elsewhere: [],
        });
    }
  });
});

describe('the check', () => {
  it('finds a box whose sides are called the other way round', () => {
    const [style] = STYLES.filter(({ id }) => id === 'tray');
    const [piece] = layNet(style!, { sizes: {}, options: {}, caliperUm: 300 }).pieces;
    const turned = (panel: string) =>
      panel.replace(/left|right/gi, (side) => (/l/i.test(side[0] ?? '') ? 'right' : 'left'));
    const named = { ...piece!, faces: piece!.faces.map((face) => ({ ...face, panel: turned(face.panel) })) };
    expect(liesElsewhere(piece!)).toEqual([]);
    expect(liesElsewhere(named).map((words) => words.replace(/ -?[\d.]+$/, ''))).toContain('left');
  });
});
