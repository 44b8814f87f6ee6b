import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';

/** Light modules around the code, as ISO/IEC 18004 asks for. */
export const QUIET_ZONE = 4;

export interface Code {
  /** Modules on a side, without the quiet zone. */
  readonly size: number;
  readonly dark: (column: number, row: number) => boolean;
  /** Outline of the dark modules, one module being one unit, for an SVG path. */
  readonly path: string;
}

/** A text as a QR code, as small as it goes, with as much error correction as fits that size; undefined where it is too long. */
export function drawCode(text: string): Code | undefined {
  try {
    const code = generate(text, { minCorrectionLevel: correction.L });
    return { size: code.size, dark: (column, row) => code.get(column, row), path: toSvgPath(code) };
  } catch {
    return undefined;
  }
}
