import fc from 'fast-check';
import * as FOLD from 'fold';
import Manifold from 'manifold-3d';
import { beforeAll, describe, expect, it, type TestContext } from 'vitest';
import { checkBox, checkGeometry } from '../../src/core/checks';
import { checkItemRoom } from '../../src/core/checks/check-item-room';
import { checkLapOrder } from '../../src/core/checks/check-lap-order';
import { checkLimits } from '../../src/core/checks/check-limits';
import { seamsApart } from '../../src/core/checks/check-seams';
import { closePiece, foldPiece, followClosing, roomInside } from '../../src/core/fold';
import {
  type BoxNet,
  fillSizes,
  foldFileOf,
  foldTextOf,
  layNet,
  nameValues,
  readFold,
} from '../../src/core/net';
import type { AskedBox } from '../../src/core/proof/legal-boxes';
import { STYLES, type SymbolSpec } from '../../src/core/styles';
import { inches, ticks } from '../../src/core/units/ticks';
import { SEED } from '../seed';
import { recordStyle, residual } from '../setup/style-record';
import { readFixture } from './fixture';
import { legalBoxes } from './legal-sizes';
import { facesArea, foldedByThree, unionArea } from './second-opinion';

const SIZES = 200;
/** Sizes for the slower second opinions. */
const FEWER = 200;

interface Tried {
  readonly asked: AskedBox;
  readonly box: BoxNet;
}

/** Judges boxes one by one and gives the worst residual; a failure says the sizes it failed at. */
function worstOf(tried: readonly Tried[], judge: (box: BoxNet) => number | undefined): number {
  let worst = 0;
  for (const { asked, box } of tried)
    try {
      worst = Math.max(worst, judge(box) ?? 0);
    } catch (error) {
      throw new Error(`at ${JSON.stringify(asked)}`, { cause: error });
    }
  return worst;
}

describe.each(STYLES.map((style) => [style.name, style] as const))(
  '%s, at 200 sizes',
  { timeout: 120_000 },
  (_, style) => {
    const { convex } = readFixture(style.id);
    let hullVolume: (points: [number, number, number][]) => number;
    let boxes: readonly Tried[] = [];
    let fewer: readonly Tried[] = [];
    beforeAll(async () => {
      const wasm = await Manifold();
      wasm.setup();
      hullVolume = (points) => wasm.Manifold.hull(points).volume();
      const sizes = fc.sample(legalBoxes(style), { seed: SEED, numRuns: SIZES });
      boxes = sizes.map((asked) => ({ asked, box: layNet(style, asked) }));
      fewer = boxes.slice(0, FEWER);
    });
    const note = (test: TestContext, check: string, tried: readonly Tried[], worst: number, unit?: string) =>
      recordStyle(test, { style: style.id, check, tried: tried.length, worst: residual(worst, unit) });

    it('closes: flat panels apart, seams and tabs meet, nothing collides, the room is as promised', (test) => {
      const worst = worstOf(boxes, (box) => {
        expect(checkGeometry(style, box)).toEqual([]);
        return Math.max(
          0,
          ...box.pieces.flatMap((piece) => seamsApart(closePiece(piece)).map(({ apart }) => apart)),
        );
      });
      note(test, 'seams apart', boxes, worst, 'mm');
    });

    it('can be closed in the order it says without a panel passing through another', (test) => {
      let acts = 0;
      let unseen = 0;
      worstOf(boxes, (box) => {
        for (const piece of box.pieces) {
          const { met, notFollowed } = followClosing(piece, box.caliperUm / 1000);
          expect([...met, ...checkLapOrder(piece)]).toEqual([]);
          acts += piece.closing.filter((act) => act.do !== 'glue').length;
          unseen += notFollowed.length;
        }
      });
      // only what springs is left out: the two acts that push in the ends of a pillow pack
      expect(unseen).toBeLessThanOrEqual(style.id === 'pillow-pack' ? 2 * boxes.length : 0);
      const share = unseen === 0 ? '' : `, ${Math.round((100 * unseen) / acts)} % of acts spring`;
      recordStyle(test, { style: style.id, check: 'path', tried: boxes.length, worst: `0 hits${share}` });
    });

    it('holds an item as large as it says, less two calipers, in card of its thickness', (test) => {
      const worst = worstOf(boxes, (box) => {
        expect(checkItemRoom(box)).toEqual([]);
      });
      note(test, 'item in card', boxes, worst, 'mm');
    });

    it('has as much card as its panels, none of it twice (union by polyclip-ts)', (test) => {
      const worst = worstOf(fewer, (box) => {
        const off = box.pieces.map((piece) => Math.abs(unionArea(piece) / facesArea(piece) - 1));
        expect(Math.max(...off)).toBeLessThan(5e-5);
        return Math.max(...off);
      });
      note(test, 'union of panels', fewer, worst);
    });

    it('folds to the same place by a second library (three, quaternions)', (test) => {
      const worst = worstOf(boxes, (box) => {
        const off = box.pieces.flatMap((piece) => {
          const other = foldedByThree(piece);
          return foldPiece(piece).flatMap(({ ring }, face) =>
            ring.flatMap(([x, y, z], at) => {
              const p = other[face]?.[at];
              return p === undefined ? [1] : [Math.abs(p.x - x), Math.abs(p.y - y), Math.abs(p.z - z)];
            }),
          );
        });
        expect(Math.max(...off)).toBeLessThan(1e-6);
        return Math.max(...off);
      });
      note(test, 'fold by three', boxes, worst, 'mm');
    });

    it.runIf(convex)('holds what the hull of its corners holds (manifold-3d)', (test) => {
      const worst = worstOf(boxes, (box) =>
        Math.max(
          0,
          ...box.pieces
            .filter(({ shell }) => shell.length > 0)
            .map((piece) => {
              const faces = foldPiece(piece);
              const corners = piece.shell.flatMap((face) =>
                (faces[face]?.ring ?? []).map((p): [number, number, number] => [...p]),
              );
              const gap = Math.max(0, ...piece.seams.map((seam) => seam.gap / 320));
              const off = Math.abs(hullVolume(corners) / roomInside(faces, piece.shell, 0.06 + gap) - 1);
              expect(off).toBeLessThan(1e-3 + gap / 25);
              return off;
            }),
        ),
      );
      note(test, 'room by hull', boxes, worst);
    });

    it('is the same net after a trip through a FOLD file', (test) => {
      const worst = worstOf(fewer, (box) => {
        const reading = readFold(foldTextOf(box, style.name));
        expect(reading.ok ? reading.pieces : reading.refusals).toEqual(box.pieces);
      });
      note(test, 'FOLD and back', fewer, worst);
    });

    it('has the faces that the FOLD reference library finds from its lines alone', (test) => {
      const worst = worstOf(fewer, (box) => {
        const file = foldFileOf(box, style.name) as unknown as FOLD.FoldGraph & {
          file_frames?: FOLD.FoldGraph[];
        };
        for (const frame of [file, ...(file.file_frames ?? [])]) {
          const { vertices_coords, edges_vertices } = frame;
          const found =
            FOLD.convert.edges_vertices_to_faces_vertices({ vertices_coords, edges_vertices })
              .faces_vertices ?? [];
          // from lines alone an opening is a face like any other
          const openings = (frame['faces_cc:holes'] ?? []).flat();
          expect(asSets(found)).toEqual(asSets([...(frame.faces_vertices ?? []), ...openings]));
        }
      });
      note(test, 'FOLD library', fewer, worst);
    });

    it('never throws, whatever the sizes: it draws what it can and says what stops it', () => {
      const usual = fillSizes(style);
      for (const [symbol, { given }] of Object.entries<SymbolSpec>(style.symbols))
        for (const size of [-81_280, -1, 0, 1, 127, 812_800, 6_400_000]) {
          const sizes = { ...usual, [symbol]: ticks(size) };
          const box = layNet(style, { sizes, caliperUm: 305, options: given?.[0] ?? {} });
          const found = checkBox(style, box);
          for (const finding of [...found, ...checkGeometry(style, box)]) {
            const named = [...`${finding.says} ${finding.remedy}`.matchAll(/\{(\w+)\}/g)];
            expect(named.filter(([, name = '']) => finding.facts[name] === undefined)).toEqual([]);
            for (const fact of Object.values(finding.facts))
              expect(typeof fact !== 'number' || Number.isSafeInteger(fact)).toBe(true);
          }
          if (size < 0 || size > 700_000)
            expect(found[0], `${symbol} ${size}`).toMatchObject({ severity: 'stop' });
        }
    });

    it('stops or warns where a size breaks any of its limits', (test) => {
      const mark = inches(0, 1, 16);
      const caught = style.constraints.filter((bound) => {
        const ways = bound.given ?? [{}];
        return fewer.some(({ asked: { sizes, caliperUm, options } }, at) => {
          const chosen = { ...options, ...ways[at % ways.length] };
          const values = nameValues(style, { sizes, caliperUm, options: chosen }).lengths;
          const broken = { ...values, [bound.symbol]: bound.atLeast === undefined ? inches(100) : inches(0) };
          return checkLimits(style, broken, mark, chosen).some(({ code }) => code === bound.code);
        });
      });
      expect(caught.map(({ code }) => code)).toEqual(style.constraints.map(({ code }) => code));
      const missed = style.constraints.length - caught.length;
      recordStyle(test, {
        style: style.id,
        check: 'limits caught',
        tried: style.constraints.length,
        worst: `${missed} missed`,
      });
    });
  },
);

const asSets = (faces: readonly (readonly number[])[]) =>
  faces.map((ring) => [...ring].sort((p, q) => p - q).join()).sort();
