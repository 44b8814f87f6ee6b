import { PictureError, type PictureFault, type Progress } from '../../../instrument/picture';
import type { RidgeRefusal } from '../../../signal/ridge-types';

/** What is happening, for the line above a progress bar. */
export const partWords: Readonly<Record<Progress['part'], string>> = {
  decoding: 'Opening the picture…',
  reading: 'Reading its grey values…',
  preview: 'Making the view for the screen…',
  sampling: 'Reading along the strip…',
  fitting: 'Looking for the ridges…',
};

/** Why a picture could not be used, and what would be accepted. */
const faultWords: Readonly<Record<PictureFault, string>> = {
  'no-background':
    'This browser cannot read pictures in the background. A newer one can; a caliper over several ridges works in any.',
  'not-a-picture': 'That file is no picture. A photo in JPEG, PNG or WebP is accepted.',
  'unknown-format':
    'That is a picture of a kind this browser cannot open. Set the camera to JPEG, or take a screenshot of the picture.',
  'too-large':
    'That picture is too large for this device, even made smaller. Take it at a lower resolution, or cut it down to the wall first.',
  failed: 'The picture could not be read: this device ran out of memory or the file is damaged. Choose it once more.',
};

/** Why no period is given, and what would be accepted. */
export const refusalWords: Readonly<Record<RidgeRefusal, string>> = {
  'too short':
    'The strip is too short to hold a pattern. Draw its two ends further apart, across five ridges at least.',
  'too few ridges':
    'There are too few ridges in the strip to tell their spacing. Draw it longer, or take the photo from further away: five ridges at least, ten are good.',
  'nothing regular':
    'Nothing regular stands out from the surface’s own grain. Put the lamp lower and more to the side, so that each ridge throws a shadow; make the strip wider; see that it runs across the ridges.',
  'only layers':
    'Only the layers themselves show, no ridges beyond them. If there are ridges, a longer strip and light from the side bring them out; else this wall has none to be seen.',
  'too coarse':
    'The picture is too coarse: a ridge is only a few pixels wide. Go closer, or use the camera at its full resolution.',
  overexposed:
    'Much of the strip is pure white. Take the lamp further away or the exposure down, and shade it from the sky.',
  'too dark': 'The strip is too dark to read. More light from the side, and no shadow of the phone on the wall.',
  'no scale':
    'The two scale marks lie on each other, or along the ridges where a length across is asked for. Set them further apart.',
};

/** What went wrong, as a sentence; `cancelled` where the person stopped it. */
export function troubleWords(error: unknown, cancelled: string): string {
  if (error instanceof DOMException && error.name === 'AbortError') return cancelled;
  return faultWords[error instanceof PictureError ? error.fault : 'failed'];
}
