const HALF_CODE = /%(?![0-9A-Fa-f]{2})/g;

function decodes(path: string): boolean {
  try {
    // What comes of it is looked at: a call whose result nobody reads is left out by the build.
    return decodeURI(path) !== '';
  } catch {
    return false;
  }
}

/** What stands behind `#` in the form that every part of the app can read: one slash in front, percent codes that mean something. */
export function mended(fragment: string): string {
  const [path = '', ...query] = fragment.split('?');
  // Two slashes in front, of either kind, would make a host of the first word; two further on match no screen at all.
  const plain = `/${path.replaceAll('\\', '%5C')}`.replace(/\/{2,}/g, '/');
  const whole = plain.replace(HALF_CODE, '%25');
  const readable = decodes(whole) ? whole : plain.replaceAll('%', '%25');
  return query.length === 0 ? readable : `${readable}?${query.join('?')}`;
}

/** Mends the address at hand, before anybody reads it. */
function mendAddress(): void {
  const fragment = window.location.hash.slice(1);
  const better = mended(fragment);
  if (fragment !== '' && better !== fragment) history.replaceState(history.state, '', `#${better}`);
}

/** Mends every address that comes: to be called before the router, which hears of it after this. */
export function watchAddress(): void {
  mendAddress();
  window.addEventListener('hashchange', mendAddress);
}
