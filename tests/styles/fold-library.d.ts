/** The reference library of the FOLD format (npm `fold` 0.12.0, MIT) has no types of its own; these are the calls the tests make. */
declare module 'fold' {
  interface FoldGraph {
    vertices_coords: number[][];
    edges_vertices: [number, number][];
    edges_assignment?: string[];
    faces_vertices?: number[][];
    'faces_cc:holes'?: number[][][];
    vertices_edges?: number[][];
  }
  export const convert: {
    edges_vertices_to_faces_vertices(fold: FoldGraph): FoldGraph;
    edges_vertices_to_vertices_edges_sorted(fold: FoldGraph): FoldGraph;
  };
  export const filter: {
    splitCuts(fold: FoldGraph): FoldGraph;
  };
}
