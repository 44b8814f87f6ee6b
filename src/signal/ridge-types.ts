/** A place in a picture, in its pixels: x to the right, y down, the picture upright as its file says. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A picture without colours, row by row from the top: 0 black, 255 white. */
export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly luminance: Float32Array | Uint8Array | Uint8ClampedArray;
}

/** A strip of a picture: its middle line runs from `from` to `to`, across the ridges; `width` in pixels. */
export interface Strip {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
}

/** Two marks in the picture and how far apart their places are on the wall. */
export interface Scale {
  readonly from: Point;
  readonly to: Point;
  /** m; between the two points, or square to the ridges only. */
  readonly distance: number;
  /** m: the distance is within ± this, every value as likely (rectangular, as a tool's limits are). */
  readonly halfWidth: number;
  /** px: each mark is set within ± this along each axis. */
  readonly pointing: number;
  /** `points`: from mark to mark, as on a rule. `across`: square to the ridges, as a part's height or a count of layers. */
  readonly measured: 'points' | 'across';
}

/** What a spectral line is taken for. */
export type LineRole = 'ridges' | 'harmonic' | 'layers' | 'other';

/** One regular pattern in the strip. */
export interface RidgeLine {
  /** Cycles per pixel in the middle of the strip. */
  readonly frequency: number;
  /** m, square to the ridges. */
  readonly period: number;
  /** Its amplitude as a share of the strongest line's, 0 to 1. */
  readonly strength: number;
  /** Its power over that of the noise beside it. */
  readonly overNoise: number;
  readonly role: LineRole;
}

/** For drawing: grey values along the strip at equal steps on the wall, slow shading and tilt taken out. */
export interface DrawnProfile {
  /** m from one value to the next. */
  readonly step: number;
  readonly values: Float64Array;
}

/** For drawing: amplitude at `k * step`, k = 0 …, of the profile above. */
export interface DrawnSpectrum {
  /** Cycles per metre from one value to the next. */
  readonly step: number;
  readonly amplitude: Float64Array;
}

export type RidgeRefusal =
  | 'too short'
  | 'too few ridges'
  | 'nothing regular'
  | 'only layers'
  | 'no period' // slow waves, none of them regular
  | 'round' // the ridges bow: the scale beside them lies elsewhere than where they lead to
  | 'too coarse'
  | 'overexposed'
  | 'too dark'
  | 'layers unknown' // what repeats may be the layers: their height would tell
  | 'angle' // the camera looks too much from one side
  | 'no scale'; // the marks stand too close together, or say nothing of the ridges' direction

/** A period was found. */
export interface RidgesFound {
  readonly status: 'found';
  /** m, square to the ridges. */
  readonly period: number;
  /** m, 95 %: fit, perspective, marks and distance together. */
  readonly halfWidth: number;
  /** What each source adds to the uncertainty: standard uncertainties as shares of the period. */
  readonly shares: { readonly fit: number; readonly marks: number; readonly distance: number };
  /** How many ridges the strip holds, not a whole number. */
  readonly ridges: number;
  /** Where each ridge is brightest (its first harmonic), across the strip, in picture pixels: to draw over the picture. */
  readonly crests: readonly { readonly from: Point; readonly to: Point }[];
  /** rad: by how much the ridges are off square to the strip. */
  readonly tilt: number;
  /** Strongest first. */
  readonly lines: readonly RidgeLine[];
  readonly profile: DrawnProfile;
  readonly spectrum: DrawnSpectrum;
}

/** None was found, and why; what there is to draw. */
export interface RidgesRefused {
  readonly status: 'refused';
  readonly reason: RidgeRefusal;
  readonly lines: readonly RidgeLine[];
  readonly profile?: DrawnProfile;
  readonly spectrum?: DrawnSpectrum;
}

export type RidgeFinding = RidgesFound | RidgesRefused;

export interface RidgeOptions {
  /** m: the layer height, to tell its own line from the ridges. */
  readonly layer?: number;
}
