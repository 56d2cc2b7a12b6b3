import fc from 'fast-check';
import * as FOLD from 'fold';
import Manifold from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkBox, checkClosingPath, checkGeometry } from '../../src/core/checks';
import { checkLimits } from '../../src/core/checks/check-limits';
import { foldPiece, roomInside } from '../../src/core/fold';
import {
  type BoxNet,
  fillSizes,
  foldFileOf,
  foldTextOf,
  layNet,
  nameValues,
  readFold,
} from '../../src/core/net';
import { type BoxStyle, STYLES, type SymbolSpec } from '../../src/core/styles';
import { inches, ticks } from '../../src/core/units/ticks';
import { SEED } from '../seed';
import { readFixture } from './fixture';
import { type Asked, legalBoxes } from './legal-sizes';
import { facesArea, foldedByThree, unionArea } from './second-opinion';

const SIZES = 200;
/** Sizes for the slower second opinions. */
const FEWER = 50;

const ask = (style: BoxStyle, judge: (box: BoxNet, asked: Asked) => void, numRuns = SIZES) =>
  fc.assert(
    fc.property(legalBoxes(style), (asked) => {
      judge(layNet(style, asked), asked);
    }),
    { seed: SEED, numRuns },
  );

describe.each(STYLES.map((style) => [style.name, style] as const))(
  '%s, at 200 sizes',
  { timeout: 120_000 },
  (_, style) => {
    const { convex } = readFixture(style.id);
    let hullVolume: (points: [number, number, number][]) => number;
    beforeAll(async () => {
      const wasm = await Manifold();
      wasm.setup();
      hullVolume = (points) => wasm.Manifold.hull(points).volume();
    });

    it('closes: flat panels apart, seams and tabs meet, nothing collides, the room is as promised', () =>
      ask(style, (box) => expect(checkGeometry(style, box)).toEqual([])));

    it('can be closed in the order it says without a panel passing through another', () =>
      ask(style, (box) => expect(checkClosingPath(box)).toEqual([])));

    it('has as much card as its panels, none of it twice (union by polyclip-ts)', () =>
      ask(
        style,
        (box) => {
          for (const piece of box.pieces) expect(unionArea(piece) / facesArea(piece)).toBeCloseTo(1, 4);
        },
        FEWER,
      ));

    it('folds to the same place by a second library (three, quaternions)', () =>
      ask(style, (box) => {
        for (const piece of box.pieces) {
          const other = foldedByThree(piece);
          const worst = Math.max(
            ...foldPiece(piece).flatMap(({ ring }, face) =>
              ring.flatMap(([x, y, z], at) => {
                const p = other[face]?.[at];
                return p === undefined ? [1] : [Math.abs(p.x - x), Math.abs(p.y - y), Math.abs(p.z - z)];
              }),
            ),
          );
          expect(worst).toBeLessThan(1e-6);
        }
      }));

    it.runIf(convex)('holds what the hull of its corners holds (manifold-3d)', () =>
      ask(style, (box) => {
        for (const piece of box.pieces.filter(({ shell }) => shell.length > 0)) {
          const faces = foldPiece(piece);
          const corners = piece.shell.flatMap((face) =>
            (faces[face]?.ring ?? []).map((p): [number, number, number] => [...p]),
          );
          const gap = Math.max(0, ...piece.seams.map((seam) => seam.gap / 320));
          expect(Math.abs(hullVolume(corners) / roomInside(faces, piece.shell, 0.06 + gap) - 1)).toBeLessThan(
            1e-3 + gap / 25,
          );
        }
      }),
    );

    it('is the same net after a trip through a FOLD file', () =>
      ask(
        style,
        (box) => {
          const reading = readFold(foldTextOf(box, style.name));
          expect(reading.ok ? reading.pieces : reading.refusals).toEqual(box.pieces);
        },
        FEWER,
      ));

    it('has the faces that the FOLD reference library finds from its lines alone', () =>
      ask(
        style,
        (box) => {
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
        },
        FEWER,
      ));

    it('never throws, whatever the sizes: it draws what it can and says what stops it', () => {
      const usual = fillSizes(style);
      for (const [symbol, { given }] of Object.entries<SymbolSpec>(style.symbols))
        for (const size of [-81_280, -1, 0, 1, 127, 812_800, 6_400_000]) {
          const sizes = { ...usual, [symbol]: ticks(size) };
          const box = layNet(style, { sizes, caliperUm: 305, options: given?.[0] ?? {} });
          const found = checkBox(style, box);
          for (const finding of [...found, ...checkGeometry(style, box)])
            for (const length of Object.values(finding.facts))
              expect(Number.isSafeInteger(length)).toBe(true);
          if (size < 0 || size > 700_000)
            expect(found[0], `${symbol} ${size}`).toMatchObject({ severity: 'stop' });
        }
    });

    it.each(style.constraints.map((bound) => [bound.code, bound] as const))(
      'stops or warns where a size breaks %s',
      (code, bound) => {
        const least = bound.atLeast !== undefined;
        const mark = inches(0, 1, 16);
        const broken = fc
          .sample(legalBoxes(style), { seed: SEED, numRuns: 50 })
          .map(({ sizes, caliperUm }) => {
            const values = nameValues(style, { sizes, caliperUm }).lengths;
            return checkLimits(
              style,
              { ...values, [bound.symbol]: least ? inches(0) : inches(100) },
              mark,
              bound.given?.[0],
            ).find((finding) => finding.code === code);
          });
        expect(broken.some((finding) => finding !== undefined)).toBe(true);
      },
    );
  },
);

const asSets = (faces: readonly (readonly number[])[]) =>
  faces.map((ring) => [...ring].sort((p, q) => p - q).join()).sort();
