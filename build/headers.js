/** What the page may do, by origin of what it loads; one script stands in the page itself, known by its hash. */
export const policy = (inlineHash) =>
  [
    "default-src 'none'",
    `script-src 'self' '${inlineHash}'`,
    "style-src 'self'",
    "img-src 'self' blob: data:",
    "connect-src 'self'",
    "font-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "form-action 'none'",
    "base-uri 'none'",
  ].join('; ');

/** Headers that every answer of a host should have: what a page cannot say of itself. README.md has the same. */
export const everywhere = {
  'Content-Security-Policy': "frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'camera=(self), microphone=(self), accelerometer=(self), gyroscope=(self), geolocation=()',
  'Cross-Origin-Opener-Policy': 'same-origin',
};

/** Names of the files in this folder change with their content; all others are asked for anew. */
const HASHED = /(^|\/)assets\//;

export const caching = (file) => (HASHED.test(file) ? 'public, max-age=31536000, immutable' : 'no-cache');

const TYPES = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  woff2: 'font/woff2',
  txt: 'text/plain; charset=utf-8',
  webmanifest: 'application/manifest+json',
};

/** All headers of one file of the build, for any static host. */
export const headersOf = (file) => ({
  ...everywhere,
  'Cache-Control': caching(file),
  'Content-Type': TYPES[file.slice(file.lastIndexOf('.') + 1)] ?? 'application/octet-stream',
});
