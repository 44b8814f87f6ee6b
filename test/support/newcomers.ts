import type { System } from '../../src/formula/system';

/** Says of each question, given in parts, whether it comes for the first time. */
export function newcomers(): (...question: readonly string[]) => boolean {
  const met = new Set<string>();
  return (...question) => {
    const key = question.join('\n');
    if (met.has(key)) return false;
    met.add(key);
    return true;
  };
}

/** The formulas that a result rests on. Where they are the same under other options, so is every question about it. */
export function behind(system: System, result: string): string {
  const needed = new Set([result]);
  const steps = [...system.steps].reverse().filter(({ formula }) => {
    if (!needed.has(formula.symbol)) return false;
    for (const name of formula.uses) needed.add(name);
    return true;
  });
  return steps.map(({ formula }) => formula.text).join('; ');
}
