import say from './words/en';

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

/** The pictures that stand for the signs of an input. */
export interface Signs {
  readonly plus: SignPicture;
  readonly minus: SignPicture;
}

export type Side = keyof Signs;

/** What tells that an input's sign is a direction. */
interface MaySigned {
  readonly signed?: Signs | 'scale';
}

/** The two pictures of an input whose sign is a direction; undefined where it has none, or the sign is one of a scale. */
export function picturesOf({ signed }: MaySigned): Signs | undefined {
  return typeof signed === 'object' ? signed : undefined;
}

const SIGN = /^\s*([+\u2212\u2013-])(?!\s*\/?\s*-)\s*/;

/** The side that a text says by the sign it starts with; undefined where it starts with none. */
export function sideOf(text: string): Side | undefined {
  const sign = SIGN.exec(text)?.[1];
  return sign === undefined ? undefined : sign === '+' ? 'plus' : 'minus';
}

/** A text without the sign it starts with. */
export const sizeOf = (text: string): string => text.replace(SIGN, '');

/** A size as it is stored once its side is picked: `+0.3` or `-0.3`. */
export function onSide(size: string, side: Side | undefined): string {
  return side === undefined ? size : `${side === 'plus' ? '+' : '-'}${size}`;
}

/**
 * A number from elsewhere (an example, a link, an instrument) as it is stored: there no sign says plus, where a person who has
 * picked no picture has not said anything.
 */
export function signedText(spec: MaySigned, text: string): string {
  const bare = !picturesOf(spec) || text.trim() === '' || sideOf(text) !== undefined;
  return bare ? text : onSide(text.trim(), 'plus');
}

/** What a picture shows, in words. */
export const sideName = (picture: SignPicture): string => say.signs[picture];
