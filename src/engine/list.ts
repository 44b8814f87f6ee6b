import type { Component } from 'solid-js';
import type { Calculator, FigureProps, ListWords, Meta } from './calculator';

/** A file a calculator can make, such as a test piece. */
export interface Download {
  readonly label: string;
  /** @param value best value of a symbol in SI, undefined where there is none */
  make(
    value: (symbol: string) => number | undefined,
  ):
    | { readonly name: string; readonly type: string; readonly bytes: Uint8Array<ArrayBuffer> }
    | { readonly reason: string };
}

export interface Listed extends Meta, ListWords {
  readonly id: string;
}

export interface Loaded {
  readonly calculator: Calculator;
  readonly Figure: Component<FigureProps<Calculator>>;
  readonly download: Download | undefined;
}

const metas = import.meta.glob<Meta>('../calculators/*/meta.ts', { eager: true, import: 'default' });
const words = import.meta.glob<ListWords>('../calculators/*/words/en/list.ts', { eager: true, import: 'default' });
const calculators = import.meta.glob<Calculator>('../calculators/*/index.ts', { import: 'default' });
const figures = import.meta.glob<Component<FigureProps<Calculator>>>('../calculators/*/figure.tsx', {
  import: 'default',
});
const downloads = import.meta.glob<Download>('../calculators/*/download.ts', { import: 'default' });

const folderOf = (path: string): string => path.split('/')[2] ?? '';

/** Every calculator there is, in the order of the list. A folder is all it takes to be in it. */
export const listed: readonly Listed[] = Object.entries(metas)
  .flatMap(([path, meta]) => {
    const own = words[path.replace('meta.ts', 'words/en/list.ts')];
    return own ? [{ id: folderOf(path), ...meta, ...own }] : [];
  })
  .sort((a, b) => a.order - b.order);

/** Loads one calculator with its drawing; undefined for an id that does not exist. */
export async function loadCalculator(id: string): Promise<Loaded | undefined> {
  const calculator = calculators[`../calculators/${id}/index.ts`];
  const figure = figures[`../calculators/${id}/figure.tsx`];
  if (!calculator || !figure) return undefined;
  const [data, Figure, download] = await Promise.all([
    calculator(),
    figure(),
    downloads[`../calculators/${id}/download.ts`]?.(),
  ]);
  return { calculator: data, Figure, download };
}
