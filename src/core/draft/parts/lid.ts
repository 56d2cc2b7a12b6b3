import { allowanceOf } from '../../styles/shapes/size-symbols';
import { shareOf } from '../forms';
import { withLimit, withQuantity, withRoomSaid, withSum, withSymbol } from '../lengths';
import { axisOf, hangsOn, isSide } from '../sides';
import { type Build, extent, on, pieceAt, plainPart, sized, usualReach } from './spot';

/** A lid that folds over, narrower and shorter than what it closes by the card of the walls. source: hinged lid, our own style */
export const lid: Build = (draft, spot) => {
  const [narrowed, lidNarrow] = withSum(draft, 'allowances', 'lidNarrow', '4t + 1/32 in');
  const [shortened, lidShort] = withSum(narrowed, 'allowances', 'lidShort', '2t + 1/64 in');
  const [wide, lidWidth] = withSum(shortened, 'lets', 'lidWidth', `${spot.hinge} - ${lidNarrow}`);
  const reach = usualReach(draft, spot);
  const [deep, lidDepth] = withSum(wide, 'lets', 'lidDepth', `${reach} - ${lidShort}`);
  const made = withRoomSaid(deep, `${spot.hinge} - t`, `${lidWidth} - t`);
  return [
    withRoomSaid(made, `${reach} - t`, `${lidDepth} - t`),
    {
      role: 'lid',
      on: on(spot),
      at: `1/2 ${lidNarrow}`,
      size: sized(spot.side, lidWidth, lidDepth),
      fold: 90,
    },
  ];
};

/** The edge of a lid that goes inside the front. source: hinged lid, our own style */
export const tuck: Build = (draft, spot) => {
  const piece = pieceAt(draft, spot);
  const hinge = hangsOn(piece.panels[spot.parent]);
  const wall = hinge && extent(piece.panels[hinge.parent], axisOf(spot.side));
  const [made, length] = withSymbol(
    draft,
    'tuck',
    allowanceOf('Tuck', 'The edge of the lid that goes inside the front.', '3/4 in', '3/8 in', '2 in'),
  );
  const low = wall
    ? withLimit(made, {
        code: 'tuck-meets-floor',
        symbol: length,
        atMost: `${wall} - 1/8 in`,
        says: 'A tuck {size} long meets the floor of the box.',
      })
    : made;
  const reach = extent(piece.panels[spot.parent], axisOf(spot.side));
  const limited = reach
    ? withLimit(low, {
        code: 'tuck-deeper-than-lid',
        symbol: length,
        atMost: reach,
        says: 'A tuck {size} long is longer than its lid and won’t slip in.',
      })
    : low;
  return [
    limited,
    {
      role: 'tuck',
      on: on(spot),
      size: sized(spot.side, spot.hinge, length),
      taper: shareOf(length, [1, 3]),
      fold: 90,
    },
  ];
};

/** An end that goes down inside the walls and keeps dust out, sloped where a tuck swings in. source: hinged lid, our own style */
export const dustFlap: Build = (draft, spot) => {
  const piece = pieceAt(draft, spot);
  const parent = piece.panels[spot.parent];
  const hinge = hangsOn(parent);
  if (parent?.role !== 'lid' || !hinge || !isSide(hinge.edge)) return plainPart('dustFlap')(draft, spot);
  const wall = extent(piece.panels[hinge.parent], axisOf(hinge.edge));
  const [sizedDraft, ear] = withSymbol(
    draft,
    'ear',
    allowanceOf('Lid ends', 'How far the ends of the lid reach down inside.', '3/4 in', '3/8 in', '2 in'),
  );
  const [clear, tuckClear] = withSum(sizedDraft, 'allowances', 'tuckClear', '2t + 1/16 in');
  const [heeled, heelClear] = withSum(clear, 'lets', 'heelClear', '1/16 in');
  const [back, heel] = withQuantity(heeled, 'earHeel', {
    means: 'how far an end of the lid slopes in at the back',
    formula: `${ear} / 4`,
    onMark: true,
  });
  const [made, toe] = withQuantity(back, 'earToe', {
    means: 'how far an end of the lid slopes in at the front, where the tuck swings in',
    formula: `${ear} / 2`,
    onMark: true,
  });
  const low = wall
    ? withLimit(made, {
        code: 'lid-ends-meet-floor',
        symbol: ear,
        atMost: `${wall} - 1/8 in`,
        says: 'Lid ends {size} long meet the floor of the box.',
      })
    : made;
  const limited = withLimit(low, {
    code: 'lid-ends-cut-to-point',
    symbol: ear,
    atMost: `${spot.hinge} - ${tuckClear} - 1/2 in`,
    says: 'Lid ends {size} long are cut to a point: their slopes meet.',
  });
  // an edge runs counter-clockwise, so on one side of the lid its start lies at the back, on the other at the front
  const heelFirst =
    (hinge.edge === 'up' && spot.side === 'right') ||
    (hinge.edge === 'down' && spot.side === 'left') ||
    (hinge.edge === 'left' && spot.side === 'up') ||
    (hinge.edge === 'right' && spot.side === 'down');
  return [
    limited,
    {
      role: 'dustFlap',
      on: on(spot),
      size: sized(spot.side, `${spot.hinge} - ${tuckClear} - ${heelClear}`, ear),
      at: heelFirst ? heelClear : tuckClear,
      taper: heelFirst ? [heel, toe] : [toe, heel],
      fold: 90,
    },
  ];
};
