import { type At, type Box, boxRing } from './ring';

export type LabelShape = 'rectangle' | 'rounded' | 'circle' | 'banner';

/** The outline of a label that fills a box: a banner with its tip below, a circle as wide as it is long, rounded corners. */
export function labelOutline(box: Box, shape: LabelShape): readonly At[] {
  const [wide, high] = [box.right - box.left, box.top - box.bottom];
  if (shape === 'banner') {
    const [a, ...rest] = boxRing(box);
    return [a!, [box.left + wide / 2, box.bottom + Math.min(high / 2, wide / 3)], ...rest];
  }
  if (shape === 'rectangle') return boxRing(box);
  const round = shape === 'circle' ? { x: wide / 2, y: high / 2 } : sameWays(Math.min(wide, high) / 5);
  return Array.from({ length: 32 }, (_, step): At => {
    const turn = ((step + 0.5) * Math.PI) / 16;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    return [
      (cos > 0 ? box.right - round.x : box.left + round.x) + round.x * cos,
      (sin > 0 ? box.top - round.y : box.bottom + round.y) + round.y * sin,
    ];
  });
}

const sameWays = (radius: number) => ({ x: radius, y: radius });
