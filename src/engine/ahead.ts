const folders = import.meta.glob(['../calculators/*/index.ts', '../calculators/*/figure.tsx']);

/**
 * Fetches a check while its screen is still on the way, so that the two come in one go and not one after the other. What
 * cannot be had is asked for again by the screen, which says so.
 */
export function fetchAhead(id: string): void {
  for (const file of ['index.ts', 'figure.tsx']) folders[`../calculators/${id}/${file}`]?.().catch(() => undefined);
}
