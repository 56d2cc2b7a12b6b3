import * as FOLD from 'fold';
import { describe, expect, it } from 'vitest';
import { foldFileOf, layNet, readFold } from '../../src/core/net';
import { openTop } from '../../src/core/styles/boxes/open-top';
import { inches } from '../../src/core/units/ticks';

/** The trade box's FOLD file in the hands of the format's reference library (npm `fold` 0.12.0, FOLD 1.2, MIT). */
const fileOf = () =>
  JSON.parse(
    JSON.stringify(
      foldFileOf(layNet(openTop, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 305 }), 'Trade box'),
    ),
  ) as FOLD.FoldGraph & Record<string, unknown>;

describe('a net in the hands of the FOLD reference library', () => {
  it('is nine faces round 19 corners, and 22 corners once its three slits are cut open', () => {
    const file = fileOf();
    expect([file.faces_vertices?.length, file.vertices_coords.length]).toEqual([9, 19]);
    FOLD.convert.edges_vertices_to_vertices_edges_sorted(file);
    const cut = FOLD.filter.splitCuts(file);
    expect(cut.vertices_coords.length).toBe(22);
    expect(cut.edges_assignment?.filter((kind) => kind === 'C')).toEqual([]);
  });

  it('says what the specification asks: version, unit, millimetres, valleys with positive angles', () => {
    const file = fileOf();
    expect(file).toMatchObject({ file_spec: 1.2, frame_unit: 'mm', frame_classes: ['creasePattern'] });
    const angles = file['edges_foldAngle'] as number[];
    const count = (kind: string) => file.edges_assignment?.filter((assigned) => assigned === kind).length;
    // 4 upright scores, 4 along the bottom; 3 slits; 4 rims, 4 flap ends, 3 on the left (it meets the tab's wall), 3 round the tab and 2 below it
    expect([count('V'), count('M'), count('C'), count('B')]).toEqual([8, 0, 3, 16]);
    expect(angles).toEqual(file.edges_assignment?.map((kind) => (kind === 'V' ? 90 : 0)));
    expect(Math.max(...file.vertices_coords.map(([x = 0]) => x))).toBeCloseTo(279.4, 9);
  });

  it('is read back from another program’s file that knows no faces and no names: same blank, scores and slits', () => {
    const { file_spec, frame_unit, vertices_coords, edges_vertices, edges_assignment, edges_foldAngle } =
      fileOf();
    const reading = readFold(
      JSON.stringify({
        file_spec,
        frame_unit,
        vertices_coords,
        edges_vertices,
        edges_assignment,
        edges_foldAngle,
      }),
    );
    if (!reading.ok) throw new Error(JSON.stringify(reading.refusals));
    const [read] = reading.pieces;
    const [own] = layNet(openTop, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 305 }).pieces;
    expect(read?.blank).toEqual(own?.blank);
    expect(read?.faces.length).toBe(9);
    const kinds = (piece: typeof own) => piece?.edges.map(({ kind, foldDeg }) => `${kind} ${foldDeg}`).sort();
    expect(kinds(read)).toEqual(kinds(own));
    expect(read?.waste).toEqual(own?.waste);
  });
});
