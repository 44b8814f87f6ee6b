/**
 * Pictures of which side is high, open or long: tapped in place of a sign. Each comes with its mirror. Their drawings stand in
 * the sheet's room, their words here; both show the thing as one stands before it.
 */
export const signPictures = [
  'right-higher',
  'left-higher',
  'back-higher',
  'front-higher',
  'gap-at-back',
  'gap-at-front',
  'mass-by-drive',
  'mass-away-from-drive',
  'mass-left',
  'mass-right',
  'second-further-out',
  'first-further-out',
  'jaws-inside-crests',
  'jaws-outside-crests',
  'high-points-alike',
  'high-points-opposite',
  'wider-than-square',
  'sharper-than-square',
] as const;

export type SignPicture = (typeof signPictures)[number];
