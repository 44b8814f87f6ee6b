import type { BuildFile, Fault } from './stage';

/** A file of the build was asked for and something else came. */
export class NotTheFile extends Error {
  override readonly name = 'NotTheFile';

  constructor(
    readonly file: string,
    readonly why: Fault,
  ) {
    super(`${file}: ${why}`);
  }
}

/** What a host may call each kind of file (RFC 9239, RFC 2318, RFC 2854, RFC 8081; a web manifest has many names, but is no page). */
const TYPES: Readonly<Record<string, RegExp>> = {
  js: /^(text|application)\/(javascript|x-javascript|ecmascript)\b/i,
  css: /^text\/css\b/i,
  html: /^text\/html\b/i,
  svg: /^image\/svg\+xml\b/i,
  png: /^image\/png\b/i,
  woff2: /^(font\/woff2|application\/font-woff2)\b/i,
  txt: /^text\/plain\b/i,
  webmanifest: /^(?!text\/html)/i,
};

const ending = (url: string): string => url.slice(url.lastIndexOf('.') + 1);

export async function hashOf(bytes: BufferSource): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return btoa(String.fromCharCode(...digest));
}

/**
 * The file, made anew from bytes that are the build's own, with the host's headers.
 * @throws NotTheFile where status, type or content is another
 */
export async function verified(file: BuildFile, response: Response): Promise<Response> {
  if (response.status !== 200) throw new NotTheFile(file.url, 'not there');
  if (TYPES[ending(file.url)]?.test(response.headers.get('content-type') ?? '') !== true) {
    throw new NotTheFile(file.url, 'wrong type');
  }
  const bytes = await response.arrayBuffer();
  if ((await hashOf(bytes)) !== file.hash) throw new NotTheFile(file.url, 'wrong content');
  // Made anew: one that came by a redirection may not answer a navigation.
  return new Response(bytes, { headers: response.headers });
}
