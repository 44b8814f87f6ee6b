import { readFileSync } from 'node:fs';

/** One recorded note of a patch file. */
export interface Recorded {
  readonly name: string;
  readonly rate: number;
  /** What the patch's header says it sounds at, Hz. */
  readonly root: number;
  readonly samples: Float32Array;
}

const FILE_HEADER = 129;
const INSTRUMENT_HEADER = 63;
const LAYER_HEADER = 47;
const SAMPLE_HEADER = 96;

/** The samples of a GF1 patch file (version 110): 16 bits, signed or not; the header gives rate and root frequency in mHz. */
export function readPatch(path: string): Recorded[] {
  const data = readFileSync(path);
  if (data.toString('latin1', 0, 12) !== 'GF1PATCH110\0') throw new Error(`${path} is no GF1 patch.`);
  const count = data[FILE_HEADER + INSTRUMENT_HEADER + 6]!;
  let at = FILE_HEADER + INSTRUMENT_HEADER + LAYER_HEADER;
  return Array.from({ length: count }, () => {
    const size = data.readUInt32LE(at + 8);
    const modes = data[at + 55]!;
    if ((modes & 1) === 0) throw new Error(`${path}: only 16-bit samples are read.`);
    const from = at + SAMPLE_HEADER;
    const samples = Float32Array.from({ length: size / 2 }, (_, i) => {
      const value = modes & 2 ? data.readUInt16LE(from + 2 * i) - 32768 : data.readInt16LE(from + 2 * i);
      return value / 32768;
    });
    const name = data.toString('latin1', at, at + 7).replace(/\0.*/s, '');
    const recorded = { name, rate: data.readUInt16LE(at + 20), root: data.readUInt32LE(at + 30) / 1000, samples };
    at = from + size;
    return recorded;
  });
}
