import { keptUnit } from '../../machine/kept-unit';
import type { Reading } from '../../machine/schema';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import type { Unit } from '../../quantity/unit';

/** A person's name for a symbol of a reading. */
export const nameIn = (reading: Reading, symbol: string): string =>
  (reading.results[symbol] ?? reading.entries[symbol])?.name ?? symbol;

/** A unit for numbers of a check that is no longer there: SI, unnamed. */
const PLAIN: Unit = { id: '', kind: '', label: '', factor: 1, offset: 0, spellings: [] };

/** The unit a number of a reading was shown in. */
export const shownIn = (kept: { readonly kind: string; readonly unit: string } | undefined): Unit =>
  (kept && keptUnit(kept)) ?? PLAIN;

/** The unit a symbol of a reading was shown in. */
export const unitIn = (reading: Reading, symbol: string): Unit =>
  shownIn(reading.results[symbol] ?? reading.entries[symbol]);

/** A value that no line may break. */
export const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0');

/** A difference of two values: 10 °C apart is no temperature. */
export const printGap = (si: number, half: number, unit: Unit, mark: DecimalMark): string =>
  formatMeasured(si, half, { ...unit, offset: 0 }, { mark, magnitude: true });
