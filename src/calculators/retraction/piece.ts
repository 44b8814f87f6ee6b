/** A comb: teeth on one foot, the gaps between them uneven, each with its length in mm cut into the foot. m. */
export interface Comb {
  /** Side of a tooth, seen from above. */
  readonly side: number;
  /** Height of the teeth above the foot. */
  readonly height: number;
  /** Thickness of the foot; the lengths are cut half as deep. */
  readonly foot: number;
  /** Whole millimetres, 3 mm at least: so wide is a digit. */
  readonly gaps: readonly number[];
}

type Point = readonly [x: number, y: number, z: number];

interface Facet {
  readonly normal: Point;
  readonly corners: readonly [Point, Point, Point];
}

const HEADER = 80;
const FACET = 50;
const MM = 1e-3;

/** Digits of three by five squares, the top row first; strokes meet side to side, never at a corner alone. */
const DIGITS: readonly (readonly string[])[] = [
  ['111', '101', '101', '101', '111'],
  ['001', '001', '001', '001', '001'],
  ['111', '001', '111', '100', '111'],
  ['111', '001', '111', '001', '111'],
  ['101', '101', '111', '001', '001'],
  ['111', '100', '111', '001', '111'],
  ['111', '100', '111', '101', '111'],
  ['111', '001', '001', '001', '001'],
  ['111', '101', '111', '101', '111'],
  ['111', '101', '111', '001', '111'],
];
const [WIDE, HIGH] = [3, 5];
/** Strip of the foot before the teeth, in which the lengths stand with a millimetre around them. */
const STRIP = HIGH + 2;

/** The squares of a length cut into the foot: lower left corners, mm, the length in the middle of its gap. */
function cutSquares(gap: number, from: number): (readonly [x: number, y: number])[] {
  const digits = Array.from(String(gap), Number);
  const left = from + Math.floor((gap - (digits.length * (WIDE + 1) - 1)) / 2);
  return digits.flatMap((digit, n) =>
    (DIGITS[digit] ?? []).flatMap((row, down) =>
      Array.from(row).flatMap((stroke, across) =>
        stroke === '1' ? [[left + n * (WIDE + 1) + across, HIGH - down] as const] : [],
      ),
    ),
  );
}

/** The comb in mm: where each tooth begins, all that is cut out, and its whole length. */
function layOut({ side, gaps }: Comb) {
  const wide = side / MM;
  const teeth = [0];
  const cut: (readonly [x: number, y: number])[] = [];
  let at = wide;
  for (const gap of gaps.map((one) => Math.round(one / MM))) {
    cut.push(...cutSquares(gap, at));
    at += gap;
    teeth.push(at);
    at += wide;
  }
  return { wide, teeth, cut, length: at };
}

const sorted = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);

/** The two triangles of a face whose corners run anticlockwise seen from outside. */
const face = (normal: Point, [a, b, c, d]: readonly [Point, Point, Point, Point]): Facet[] => [
  { normal, corners: [a, b, c] },
  { normal, corners: [a, c, d] },
];

/** Faces of a box on a lattice, each with the step to the box beyond it. */
function facesOf([x0, y0, z0]: Point, [x1, y1, z1]: Point) {
  return [
    [
      [0, 0, -1],
      [x0, y0, z0],
      [x0, y1, z0],
      [x1, y1, z0],
      [x1, y0, z0],
    ],
    [
      [0, 0, 1],
      [x0, y0, z1],
      [x1, y0, z1],
      [x1, y1, z1],
      [x0, y1, z1],
    ],
    [
      [0, -1, 0],
      [x0, y0, z0],
      [x1, y0, z0],
      [x1, y0, z1],
      [x0, y0, z1],
    ],
    [
      [0, 1, 0],
      [x0, y1, z0],
      [x0, y1, z1],
      [x1, y1, z1],
      [x1, y1, z0],
    ],
    [
      [-1, 0, 0],
      [x0, y0, z0],
      [x0, y0, z1],
      [x0, y1, z1],
      [x0, y1, z0],
    ],
    [
      [1, 0, 0],
      [x1, y0, z0],
      [x1, y1, z0],
      [x1, y1, z1],
      [x1, y0, z1],
    ],
  ] as const;
}

/** The surface of what is solid on a lattice: every face between solid and air, so that all edges meet. */
function surface(lines: readonly (readonly number[])[], isSolid: (cell: Point) => boolean): Facet[] {
  const [xs = [], ys = [], zs = []] = lines;
  const within = (i: number, j: number, k: number): boolean => {
    const [x, y, z] = [xs[i], ys[j], zs[k]];
    if (x === undefined || y === undefined || z === undefined) return false;
    const [right, back, top] = [xs[i + 1], ys[j + 1], zs[k + 1]];
    if (right === undefined || back === undefined || top === undefined) return false;
    return isSolid([(x + right) / 2, (y + back) / 2, (z + top) / 2]);
  };
  const cells = xs.flatMap((x, i) => ys.flatMap((y, j) => zs.map((z, k) => ({ at: [x, y, z] as const, i, j, k }))));
  return cells
    .filter(({ i, j, k }) => within(i, j, k))
    .flatMap(({ at, i, j, k }) =>
      facesOf(at, [xs[i + 1] ?? 0, ys[j + 1] ?? 0, zs[k + 1] ?? 0]).flatMap(([normal, ...corners]) =>
        within(i + normal[0], j + normal[1], k + normal[2]) ? [] : face(normal, corners),
      ),
    );
}

/** Facets as a binary STL file: header, count, then normal, three corners and an empty attribute each; little-endian. */
function stl(facets: readonly Facet[]): Uint8Array<ArrayBuffer> {
  const buffer = new ArrayBuffer(HEADER + 4 + FACET * facets.length);
  const bytes = new Uint8Array(buffer);
  const view = new DataView(buffer);
  // For programs, the same in every language. Not to begin with "solid": that is how a text file begins.
  bytes.set(new TextEncoder().encode('comb-mm').subarray(0, HEADER));
  view.setUint32(HEADER, facets.length, true);
  facets.forEach((facet, i) => {
    [facet.normal, ...facet.corners].flat().forEach((number, k) => {
      view.setFloat32(HEADER + 4 + FACET * i + 4 * k, number, true);
    });
  });
  return bytes;
}

/** The comb as one closed shell on the plane z = 0, its gaps along x, as a binary STL file in mm. */
export function combStl(comb: Comb): Uint8Array<ArrayBuffer> {
  const { wide, teeth, cut, length } = layOut(comb);
  const foot = comb.foot / MM;
  const [floor, top] = [foot / 2, foot + comb.height / MM];
  const xs = sorted([0, length, ...teeth.flatMap((x) => [x, x + wide]), ...cut.flatMap(([x]) => [x, x + 1])]);
  const ys = sorted([0, STRIP, STRIP + wide, ...cut.flatMap(([, y]) => [y, y + 1])]);
  const isCut = (x: number, y: number) => cut.some(([left, low]) => x > left && x < left + 1 && y > low && y < low + 1);
  const isTooth = (x: number, y: number) => y > STRIP && teeth.some((left) => x > left && x < left + wide);
  return stl(
    surface([xs, ys, [0, floor, foot, top]], ([x, y, z]) => {
      if (z > foot) return isTooth(x, y);
      return z < floor || !isCut(x, y);
    }),
  );
}
