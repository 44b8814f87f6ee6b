import type { RidgeFinding, RidgeOptions, Scale, Strip } from '../signal/ridge';
import type { RippleFinding } from '../signal/ripple';
import type { SheetFinding } from '../signal/sheet';

/** How far a long task is: the part it is at, and the share of the whole task that is done, 0 to 1. */
export interface Progress {
  readonly part: 'decoding' | 'preview' | 'reading' | 'sampling' | 'fitting';
  readonly done: number;
}

export type PictureFault =
  | 'no-background' // this browser cannot read pictures in the background
  | 'not-a-picture'
  | 'unknown-format' // a picture by its first bytes, but damaged or not one that this browser can open
  | 'too-large' // for this device's memory, even made smaller
  | 'failed';

/** What can be asked of a picture. */
export type Question =
  | { readonly of: 'ridges'; readonly strip: Strip; readonly scale: Scale; readonly options: RidgeOptions }
  | { readonly of: 'ripples'; readonly strip: Strip; readonly scale: Scale }
  | { readonly of: 'sheet' };

export type Answer =
  | { readonly of: 'ridges'; readonly finding: RidgeFinding }
  | { readonly of: 'ripples'; readonly finding: RippleFinding }
  | { readonly of: 'sheet'; readonly finding: SheetFinding };

/** From the page to the worker. */
export type Task =
  | { readonly kind: 'open'; readonly file: Blob }
  | { readonly kind: 'analyse'; readonly id: number; readonly question: Question }
  | { readonly kind: 'cancel'; readonly id: number };

/** A picture as it was opened, without the worker's part of it. */
export interface Opened {
  readonly width: number;
  readonly height: number;
  /** Pixels of the file's picture per pixel held: 1, or more where the device could not hold all of it. */
  readonly reduced: number;
  /** For the screen; the caller closes it. */
  readonly preview: ImageBitmap;
  /** Preview pixels per picture pixel, at most 1. */
  readonly previewScale: number;
}

/** From the worker to the page; id 0 is the opening. */
export type FromWorker =
  | { readonly kind: 'progress'; readonly id: number; readonly progress: Progress }
  | { readonly kind: 'opened'; readonly id: 0; readonly opened: Opened }
  | { readonly kind: 'finding'; readonly id: number; readonly answer: Answer }
  | { readonly kind: 'fault'; readonly id: number; readonly fault: PictureFault };
