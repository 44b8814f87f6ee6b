import { inStyle, isStyle } from './strange.ts';

/** The language that words are written in first: nothing is swapped for it. */
export const HOME = 'en';

/** The language that TRAMMEL_LANGUAGE names: one per build. `marked` and `pseudo` are English made strange, for tests. */
export const language = process.env.TRAMMEL_LANGUAGE ?? HOME;

/** Where a build in this language goes. */
export const outDir = language === HOME ? 'dist' : `dist-${language}`;

/** An entry of a words file, whole, as this build shows it. */
export const asBuilt = (text: string): string => (isStyle(language) ? inStyle(text, language) : text);
