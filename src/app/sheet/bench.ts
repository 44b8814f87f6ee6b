import { batch, createSignal } from 'solid-js';
import type { Calculator, Choices, InputSpec } from '../../engine/calculator';
import type { Entry } from '../../engine/entry';
import { onSide, sideOf, signedText, sizeOf, type Side } from '../../engine/signs';
import { usualTool } from '../../engine/tooled';
import { toTyped, toTypedMeasured } from '../../quantity/parse';
import { unitById, type Unit } from '../../quantity/unit';
import { AS_MARKED } from '../../reference/tools';
import type { Sheet } from '../../machine/draft';
import { createEntries, withoutReadings } from './entries';
import { createFollowing, type Surroundings } from './follow';
import { nudged } from './nudge';

/** The tool meant until one is picked: the input's own, else the marking where a typical value is taken as exact. */
function toolMeant(spec: InputSpec | undefined, choices: Choices): string {
  if (spec?.tool === undefined) return spec?.spread === undefined ? AS_MARKED : '';
  return usualTool(spec, choices)?.id ?? '';
}

/** The state of one calculator's screen: entries, options, and everything that follows from them. */
export function createBench(calc: Calculator, around: Surroundings, start: Sheet, startsAgain = false) {
  const { write, now, ...entries } = createEntries(
    startsAgain ? { ...start, ...withoutReadings(calc, start) } : start,
    startsAgain,
  );
  const { entered } = entries;
  const [isRepeat, setRepeat] = createSignal(startsAgain);
  const following = createFollowing(calc, around, now, isRepeat);
  const { stateOf } = following;
  const [line, openLine] = createSignal<string>();

  const entryOf = (symbol: string): Entry => {
    const spec = calc.inputs[symbol];
    const state = stateOf(symbol);
    const kept = spec?.from === undefined ? undefined : following.kept()[spec.from];
    return (
      entered.entries[symbol] ?? {
        text: '',
        unit: state?.ok
          ? state.unit.id
          : ((around.units()[spec?.measure.kind.id ?? ''] ?? spec?.measure.unit)?.id ?? ''),
        tool: kept?.tool ?? toolMeant(spec, following.choices()),
      }
    );
  };
  /** The side in force of a line with two pictures: the one picked, else that of the machine's or the typical value. */
  const sideIn = (symbol: string): Side | undefined => {
    const picked = sideOf(entryOf(symbol).text);
    const state = stateOf(symbol);
    if (picked || !state?.ok || state.value === 0 || entryOf(symbol).text.trim() !== '') return picked;
    return state.value > 0 ? 'plus' : 'minus';
  };
  /** Changes several lines at once, as one change. */
  const changeAll = (parts: Readonly<Record<string, Partial<Entry>>>): void => {
    const changed = Object.entries(parts).map(([symbol, part]) => [symbol, { ...entryOf(symbol), ...part }] as const);
    write(Object.fromEntries(changed));
  };

  return {
    ...entries,
    ...following,
    entryOf,
    changeAll,
    /** The line that was opened last; empty where it was closed again. */
    line,
    openLine: (symbol: string): void => void openLine(symbol),
    change: (symbol: string, part: Partial<Entry>): void => changeAll({ [symbol]: part }),
    calc,
    last: around.last,
    /** The reading is taken again: its entries start empty, what is set and known stays. */
    isRepeat,
    repeat(): void {
      batch(() => {
        entries.replace(withoutReadings(calc, entered));
        setRepeat(true);
        openLine(undefined);
      });
    },
    /** The unit a line is entered in unless another is typed. */
    unitOf(symbol: string): Unit | undefined {
      const spec = calc.inputs[symbol];
      return spec && (unitById(spec.measure.kind, entryOf(symbol).unit) ?? spec.measure.unit);
    },
    sideIn,
    /** Picks the side of a line with two pictures; the size stays. */
    pickSide(symbol: string, side: Side): void {
      const { text } = entryOf(symbol);
      const state = stateOf(symbol);
      const stands = text === '' && state?.ok === true && state.value !== 0;
      const size = stands ? toTyped(Math.abs(state.value), state.unit, around.mark(), 8) : sizeOf(text);
      changeAll({ [symbol]: { text: onSide(size, side) } });
    },
    /** Takes the size of a line with two pictures as typed; a sign before it picks the side. */
    typeSize(symbol: string, typed: string): void {
      const { text } = entryOf(symbol);
      changeAll({ [symbol]: { text: onSide(sizeOf(typed), sideOf(typed) ?? sideOf(text)) } });
    },
    /** Moves a line's value by so many divisions. */
    nudge(symbol: string, divisions: number): void {
      const spec = calc.inputs[symbol];
      const state = stateOf(symbol);
      if (spec) write({ [symbol]: nudged(spec, state, entryOf(symbol), divisions, around.mark()) });
    },
    /** Puts a measured value in, in SI, with the half-width that the instrument states. */
    measured(symbol: string, taken: { readonly value: number; readonly halfWidth: number }): void {
      const spec = calc.inputs[symbol];
      if (!spec) return;
      const unit = around.units()[spec.measure.kind.id] ?? spec.measure.unit;
      const text = signedText(spec, toTypedMeasured(taken.value, taken.halfWidth, unit, around.mark()));
      write({ [symbol]: { text, unit: unit.id, tool: '' } });
    },
  };
}

export type Bench = ReturnType<typeof createBench>;

/** A calculator on its bench: what most parts of the sheet work on. */
export interface OnBench {
  readonly calculator: Calculator;
  readonly bench: Bench;
}
