/** Two equal square blocks standing apart on the bed. m. */
export interface Blocks {
  readonly side: number;
  readonly height: number;
  /** Clear distance between their facing walls. */
  readonly gap: number;
}

type Point = readonly [x: number, y: number, z: number];

interface Facet {
  readonly normal: Point;
  readonly corners: readonly [Point, Point, Point];
}

const HEADER = 80;
const FACET = 50;
const MM = 1e-3;

/** The two triangles of a face whose corners run anticlockwise seen from outside. */
function face(normal: Point, a: Point, b: Point, c: Point, d: Point): Facet[] {
  return [
    { normal, corners: [a, b, c] },
    { normal, corners: [a, c, d] },
  ];
}

/** A box by its lowest and highest corner, as twelve facets. */
function box([x0, y0, z0]: Point, [x1, y1, z1]: Point): Facet[] {
  return [
    ...face([0, 0, -1], [x0, y0, z0], [x0, y1, z0], [x1, y1, z0], [x1, y0, z0]),
    ...face([0, 0, 1], [x0, y0, z1], [x1, y0, z1], [x1, y1, z1], [x0, y1, z1]),
    ...face([0, -1, 0], [x0, y0, z0], [x1, y0, z0], [x1, y0, z1], [x0, y0, z1]),
    ...face([0, 1, 0], [x0, y1, z0], [x0, y1, z1], [x1, y1, z1], [x1, y1, z0]),
    ...face([-1, 0, 0], [x0, y0, z0], [x0, y0, z1], [x0, y1, z1], [x0, y1, z0]),
    ...face([1, 0, 0], [x1, y0, z0], [x1, y1, z0], [x1, y1, z1], [x1, y0, z1]),
  ];
}

/** Facets as a binary STL file: header, count, then normal, three corners and an empty attribute each; little-endian. */
function stl(facets: readonly Facet[]): Uint8Array<ArrayBuffer> {
  const buffer = new ArrayBuffer(HEADER + 4 + FACET * facets.length);
  const bytes = new Uint8Array(buffer);
  const view = new DataView(buffer);
  // For programs, the same in every language. Not to begin with "solid": that is how a text file begins.
  bytes.set(new TextEncoder().encode('two-blocks-mm').subarray(0, HEADER));
  view.setUint32(HEADER, facets.length, true);
  facets.forEach((facet, i) => {
    [facet.normal, ...facet.corners].flat().forEach((number, k) => {
      view.setFloat32(HEADER + 4 + FACET * i + 4 * k, number, true);
    });
  });
  return bytes;
}

/** Two separate closed blocks on the plane z = 0, side by side along x, as a binary STL file in mm. */
export function twoBlocks(blocks: Blocks): Uint8Array<ArrayBuffer> {
  const [side, height, gap] = [blocks.side / MM, blocks.height / MM, blocks.gap / MM];
  const far = side + gap;
  return stl([...box([0, 0, 0], [side, side, height]), ...box([far, 0, 0], [far + side, side, height])]);
}
