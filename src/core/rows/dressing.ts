import { z } from 'zod';
import { id, panelName, whole, words } from './fields';
import { lengthMm, marginMm } from './lengths';

/** Which piece of the box a panel belongs to, where two (a tray and its lid) name theirs alike; left out, the first that has it. */
const part = panelName;

/** How a dressing piece follows the box; its width and height hold the last sizes it had. */
const pieceFit = z.discriminatedUnion('rule', [
  /** On a panel, the same reveal on every side; two layers deep is the same with twice the reveal. */
  z.strictObject({
    rule: z.literal('on-panel'),
    panel: panelName,
    part: part.optional(),
    revealMm: marginMm,
    /** A reveal of its own on every side in place of the one for all, as the net lies with its outside up. */
    sidesMm: z.strictObject({ left: marginMm, right: marginMm, up: marginMm, down: marginMm }).optional(),
  }),
  /** Round the box: girth, four calipers, and a lap. Left out, `way` is round the four walls; else over the top, past the front or past the sides. */
  z.strictObject({
    rule: z.literal('around'),
    heightMm: lengthMm,
    lapMm: marginMm,
    way: z.enum(['walls', 'front', 'sides']).optional(),
  }),
  /** Inside the back, standing above the rim; `easeMm` off the width in all. */
  z.strictObject({ rule: z.literal('behind'), aboveRimMm: marginMm, easeMm: marginMm }),
  /** Film behind the largest opening of a panel, lapping over its edge on every side. */
  z.strictObject({
    rule: z.literal('over-window'),
    panel: panelName,
    part: part.optional(),
    lapMm: marginMm,
  }),
  /** One family of strips that divide the room into cells, slotted half-way where the others cross; `easeMm` off its length in all. */
  z.strictObject({
    rule: z.literal('divides'),
    runs: z.enum(['across', 'deep']),
    columns: whole(2, 12),
    rows: whole(2, 12),
    heightMm: lengthMm,
    easeMm: marginMm,
  }),
  /** As large as the floor less `easeMm`; raised on four sides folded down, with holes for things to stand in, where it has them. */
  z.strictObject({
    rule: z.literal('on-floor'),
    easeMm: marginMm,
    riseMm: marginMm,
    holes: z
      .strictObject({
        shape: z.enum(['round', 'square']),
        acrossMm: lengthMm,
        columns: whole(1, 12),
        rows: whole(1, 12),
      })
      .optional(),
  }),
]);

/** A cut piece that goes with each box: a liner behind the contents, a layer, a band, a tag, window film, or an insert. */
const dressingPiece = z.strictObject({
  id,
  kind: z.enum(['liner', 'layer', 'band', 'tag', 'window', 'divider', 'raised-floor', 'cushion']),
  name: words,
  widthMm: lengthMm,
  heightMm: lengthMm,
  perBox: whole(1, 100),
  grain: z.enum(['along-width', 'along-height', 'free']),
  paperId: id.nullable(),
  shape: z.enum(['rectangle', 'rounded', 'circle', 'banner']).optional(),
  fit: pieceFit.optional(),
  /** Where a tag or label goes: from the panel's lower left corner, as the net lies with its outside up. */
  placed: z
    .strictObject({ panel: panelName, part: part.optional(), leftMm: marginMm, downMm: marginMm })
    .optional(),
  /** Strips of tape that hold one piece; left out, what is usual for its kind. */
  strips: whole(0, 20).optional(),
});

/** A bow by its loops and tails: each loop takes twice its length. */
const bow = z.strictObject({
  loops: whole(0, 20),
  loopMm: marginMm,
  tailMm: marginMm,
  knotMm: marginMm,
});

/** Ribbon or twine round each box: both ways, a ring round the walls, once over the top, or only a bow; or through the openings of its ribbon pull. */
const tie = z.strictObject({
  id,
  name: words,
  supplyId: id.nullable(),
  wrap: z.enum(['cross', 'over-front', 'over-sides', 'ring', 'none', 'pull']),
  bow: bow.nullable(),
  perBox: whole(1, 20),
});

/** Something counted onto or into each box: a seal, a clip, foam squares, a bag, what is given. */
const counted = z.strictObject({
  id,
  name: words,
  supplyId: id.nullable(),
  perBox: whole(1, 1000),
});

export const dressing = z.strictObject({
  id,
  name: words,
  pieces: z.array(dressingPiece).max(50),
  ties: z.array(tie).max(10).optional(),
  counted: z.array(counted).max(50).optional(),
});

export type PieceFit = z.infer<typeof pieceFit>;
export type DressingPiece = z.infer<typeof dressingPiece>;
export type Bow = z.infer<typeof bow>;
export type Tie = z.infer<typeof tie>;
export type Counted = z.infer<typeof counted>;
export type Dressing = z.infer<typeof dressing>;
