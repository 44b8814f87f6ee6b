import type { RidgeFinding, RidgeOptions, Scale, Strip } from '../signal/ridge';

/** How far a long task is: the part it is at, and the share of the whole that is done, 0 to 1. */
export interface Progress {
  readonly part: 'decoding' | 'reading' | 'preview' | 'sampling' | 'fitting';
  readonly done: number;
}

export type OnProgress = (progress: Progress) => void;

export type PictureFault =
  | 'no-background' // this browser cannot read pictures in the background
  | 'not-a-picture'
  | 'unknown-format' // a picture by its first bytes, but not one that this browser can open
  | 'too-large' // for this device's memory, even made smaller
  | 'failed';

/** A picture held in the background; every coordinate is in its pixels, `width` by `height`, upright. */
export interface OpenPicture {
  readonly width: number;
  readonly height: number;
  /** Pixels of the file's picture per pixel held: 1, or more where the device could not hold all of it. */
  readonly reduced: number;
  /** For the screen; the caller closes it. */
  readonly preview: ImageBitmap;
  /** Preview pixels per picture pixel, at most 1. */
  readonly previewScale: number;
  /** @throws DOMException AbortError where `signal` says so; PictureError */
  readonly analyse: (
    strip: Strip,
    scale: Scale,
    options: RidgeOptions,
    signal?: AbortSignal,
    onProgress?: OnProgress,
  ) => Promise<RidgeFinding>;
  /** Ends the worker and frees the picture. */
  readonly close: () => void;
}
