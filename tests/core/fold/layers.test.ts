import { expect, it } from 'vitest';
import { layerSense } from '../../../src/core/fold/layers';
import { layNet } from '../../../src/core/net';
import { foldedSquare } from '../../../src/core/styles/boxes/folded-square';

it('a point folded over onto the floor has the floor on its own inside, which looks down', () => {
  const [piece] = layNet(foldedSquare, { sizes: {}, caliperUm: 200 }).pieces;
  const face = (panel: string) => piece!.faces.findIndex((each) => each.panel === panel);
  const sense = layerSense(piece!, piece!.closing.length);
  const [base, point] = [face('base'), face('backPoint')];
  expect(sense(point, base)).toBe(1);
  expect(sense(base, point)).toBe(1);
  // of the layers of a wall: the inner one looks out at the wall it is folded over
  expect(sense(face('backInner'), face('back'))).toBe(1);
  expect(sense(face('back'), face('backInner'))).toBe(1);
});
