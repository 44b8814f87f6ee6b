const folders = import.meta.glob(['../calculators/*/index.ts', '../calculators/*/figure.tsx']);

/**
 * Fetches the check that an address names while its screen is still on the way, so that the two come in one go and not one
 * after the other. What cannot be had is asked for again by the screen, which says so.
 *
 * @param address the fragment, as `#/check/screw-lead`
 */
export function fetchAhead(address: string): void {
  const id = /^#\/check\/([\w-]+)/.exec(address)?.[1] ?? '';
  for (const file of ['index.ts', 'figure.tsx']) folders[`../calculators/${id}/${file}`]?.().catch(() => undefined);
}
