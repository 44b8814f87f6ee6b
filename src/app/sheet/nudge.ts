import type { InputSpec } from '../../engine/calculator';
import { nudgeStep, type Entry, type InputState } from '../../engine/entry';
import { toTyped, type DecimalMark } from '../../quantity/parse';
import { AS_MARKED } from '../../reference/tools';

const PLUS_MINUS = /\s*(?:\+\s*\/?\s*-|±).*/;

/** An entry moved by so many divisions of its tool, within the input's range; a half-width typed after it stays. */
export function nudged(
  spec: InputSpec,
  state: InputState | undefined,
  entry: Entry,
  divisions: number,
  mark: DecimalMark,
): Entry {
  const unit = state?.ok ? state.unit : spec.measure.unit;
  const [low = -Infinity, high = Infinity] = spec.range.map(
    (end) => end * spec.measure.unit.factor + spec.measure.unit.offset,
  );
  const from = state?.ok ? state.value : Math.min(Math.max(0, low), high);
  const step = nudgeStep(spec, entry.tool, from, unit);
  const moved = Math.min(Math.max(from + divisions * step, low), high);
  const half = PLUS_MINUS.exec(entry.text)?.[0] ?? '';
  // A value moved by hand is no longer what was marked on the part.
  const tool = entry.tool === AS_MARKED ? '' : entry.tool;
  return { text: toTyped(moved, unit, mark, 8) + half, unit: unit.id, tool };
}
