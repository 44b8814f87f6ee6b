import type { InputSpec } from '../../engine/calculator';
import { nudgeStep, type Entry, type InputState } from '../../engine/entry';
import { onSide, picturesOf, sideOf, sizeOf } from '../../engine/signs';
import { parseQuantity, toTyped, type DecimalMark } from '../../quantity/parse';
import { unitById } from '../../quantity/unit';
import { AS_MARKED } from '../../reference/tools';

const PLUS_MINUS = /\s*(?:\+\s*\/?\s*-|±).*/;

/** The half-width typed behind a value. */
const halfIn = (text: string): string => PLUS_MINUS.exec(text)?.[0] ?? '';

/** The size of an entry with two pictures moved by so many divisions, not below nothing; its side stays. */
function nudgedSize(
  spec: InputSpec,
  state: InputState | undefined,
  entry: Entry,
  divisions: number,
  mark: DecimalMark,
) {
  const side =
    sideOf(entry.text) ?? (state?.ok && state.value !== 0 ? (state.value > 0 ? 'plus' : 'minus') : undefined);
  const known = unitById(spec.measure.kind, entry.unit) ?? spec.measure.unit;
  const typed = parseQuantity(sizeOf(entry.text), spec.measure.kind, known, mark);
  const unit = typed.ok ? typed.unit : known;
  const from = typed.ok ? typed.value : state?.ok ? Math.abs(state.value) : 0;
  const [low, high] = spec.range;
  const most = (side === 'minus' ? -low : high) * spec.measure.unit.factor;
  const moved = Math.min(Math.max(from + divisions * nudgeStep(spec, entry.tool, from, unit), 0), most);
  const size = toTyped(moved, unit, mark, 8) + halfIn(entry.text);
  return { text: onSide(size, side), unit: unit.id, tool: withoutMark(entry) };
}

/** A value moved by hand is no longer what was marked on the part. */
const withoutMark = ({ tool }: Entry): string => (tool === AS_MARKED ? '' : tool);

/** An entry moved by so many divisions of its tool, within the input's range; a half-width typed after it stays. */
export function nudged(
  spec: InputSpec,
  state: InputState | undefined,
  entry: Entry,
  divisions: number,
  mark: DecimalMark,
): Entry {
  if (picturesOf(spec)) return nudgedSize(spec, state, entry, divisions, mark);
  const unit = state?.ok ? state.unit : spec.measure.unit;
  const [low = -Infinity, high = Infinity] = spec.range.map(
    (end) => end * spec.measure.unit.factor + spec.measure.unit.offset,
  );
  const from = state?.ok ? state.value : Math.min(Math.max(0, low), high);
  const step = nudgeStep(spec, entry.tool, from, unit);
  const moved = Math.min(Math.max(from + divisions * step, low), high);
  return { text: toTyped(moved, unit, mark, 8) + halfIn(entry.text), unit: unit.id, tool: withoutMark(entry) };
}
