import { batch, createMemo, createSignal } from 'solid-js';
import { createStore, reconcile, unwrap } from 'solid-js/store';
import type { Calculator, InputSpec } from '../../engine/calculator';
import { nudgeStep, type Entry, type KeptValue } from '../../engine/entry';
import { evaluate, type Evaluation, type Situation } from '../../engine/evaluate';
import { toTyped, toTypedMeasured, type DecimalMark } from '../../quantity/parse';
import { unitById, type Unit } from '../../quantity/unit';
import { AS_MARKED } from '../../reference/tools';

/** What a person has entered for one calculator: kept as a draft, so it must stay plain data. */
export interface Entered {
  readonly entries: Record<string, Entry>;
  readonly choices: Record<string, string>;
}

export interface Surroundings {
  readonly kept: () => Readonly<Record<string, KeptValue | undefined>>;
  /** Options the machine keeps, by place. */
  readonly keptChoices: () => Readonly<Record<string, string>>;
  readonly mark: () => DecimalMark;
  readonly units: () => Readonly<Record<string, Unit>>;
}

/** An evaluation to show, and whether it is the last good one from before the present mistake. */
export interface Shown {
  readonly evaluation: Evaluation;
  readonly stale: boolean;
}

/** True when something entered is refused, or a formula left its domain: a mistake to mend, not a sheet half filled. */
function hasMistake(evaluation: Evaluation): boolean {
  return (
    Object.values(evaluation.inputs).some((state) => !state.ok && !state.blank) ||
    Object.values(evaluation.outcomes).some((outcome) => !outcome.ok && outcome.failure.kind === 'domain')
  );
}

const sameOptions = (a: Evaluation, b: Evaluation): boolean =>
  Object.keys(a.choices).every((name) => a.choices[name] === b.choices[name]);

const PLUS_MINUS = /\s*(?:\+\s*\/?\s*-|±).*/;

/** The tool meant until one is picked: the input's own, else the marking where a typical value is taken as exact. */
function usualTool(spec: InputSpec | undefined): string {
  return spec?.tool ?? (spec?.spread === undefined ? AS_MARKED : '');
}

/** The state of one calculator's screen: entries, options, and everything that follows from them. */
export function createBench(calc: Calculator, around: Surroundings, start: Entered) {
  const [entered, setEntered] = createStore<Entered>({ entries: { ...start.entries }, choices: { ...start.choices } });

  /** What stood here before the sheet was cleared or an example put in. */
  const [before, setBefore] = createSignal<Entered>();

  const situation = createMemo<Situation>(() => {
    const places = around.keptChoices();
    const fromMachine = Object.fromEntries(
      Object.entries(calc.choices).flatMap(([name, spec]) => {
        const kept = spec.from === undefined ? undefined : places[spec.from];
        return kept === undefined ? [] : [[name, kept]];
      }),
    );
    return {
      entries: Object.fromEntries(Object.entries(entered.entries).map(([symbol, entry]) => [symbol, { ...entry }])),
      choices: { ...fromMachine, ...entered.choices },
      kept: around.kept(),
      mark: around.mark(),
      units: around.units(),
    };
  });
  const evaluation = createMemo(() => evaluate(calc, situation()));
  const shown = createMemo<Shown>((before) => {
    const now = evaluation();
    if (!hasMistake(now)) return { evaluation: now, stale: false };
    // Under other options the old verdict answers another question.
    const had = before && !hasMistake(before.evaluation) && before.evaluation.verdict.state !== 'none';
    const last = had && sameOptions(before.evaluation, now) ? before : undefined;
    return { evaluation: last?.evaluation ?? now, stale: last !== undefined };
  });

  const entryOf = (symbol: string): Entry => {
    const spec = calc.inputs[symbol];
    const state = evaluation().inputs[symbol];
    const kept = spec?.from === undefined ? undefined : around.kept()[spec.from];
    return (
      entered.entries[symbol] ?? {
        text: '',
        unit: state?.ok
          ? state.unit.id
          : ((around.units()[spec?.measure.kind.id ?? ''] ?? spec?.measure.unit)?.id ?? ''),
        tool: kept?.tool ?? usualTool(spec),
      }
    );
  };

  const [changes, setChanges] = createSignal(0);
  const changed = () => setChanges((count) => count + 1);
  const change = (symbol: string, part: Partial<Entry>): void => {
    batch(() => {
      setEntered('entries', symbol, { ...entryOf(symbol), ...part });
      changed();
    });
  };

  /** Changes several lines at once, as one change. */
  const changeAll = (parts: Readonly<Record<string, Partial<Entry>>>): void => {
    batch(() => {
      for (const [symbol, part] of Object.entries(parts))
        setEntered('entries', symbol, { ...entryOf(symbol), ...part });
      changed();
    });
  };

  /** The unit a line is entered in unless another is typed. */
  const unitOf = (symbol: string): Unit | undefined => {
    const spec = calc.inputs[symbol];
    return spec && (unitById(spec.measure.kind, entryOf(symbol).unit) ?? spec.measure.unit);
  };

  const nudge = (symbol: string, divisions: number): void => {
    const spec = calc.inputs[symbol];
    const state = evaluation().inputs[symbol];
    if (!spec) return;
    const entry = entryOf(symbol);
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
    change(symbol, { text: toTyped(moved, unit, around.mark(), 8) + half, unit: unit.id, tool });
  };

  /** Puts a measured value in, in SI, with the half-width that the instrument states. */
  const measured = (symbol: string, taken: { readonly value: number; readonly halfWidth: number }): void => {
    const spec = calc.inputs[symbol];
    if (!spec) return;
    const unit = around.units()[spec.measure.kind.id] ?? spec.measure.unit;
    change(symbol, {
      text: toTypedMeasured(taken.value, taken.halfWidth, unit, around.mark()),
      unit: unit.id,
      tool: '',
    });
  };

  return {
    entered,
    measured,
    situation,
    evaluation,
    shown,
    entryOf,
    change,
    changeAll,
    unitOf,
    nudge,
    /** Counts every change of an entry or option. */
    changes,
    pick(name: string, option: string): void {
      batch(() => {
        setEntered('choices', name, option);
        changed();
      });
    },
    /** Puts other entries in; what stood there can be put back. */
    replace(to: Entered): void {
      setBefore(before() ?? structuredClone(unwrap(entered)));
      setEntered(reconcile({ entries: { ...to.entries }, choices: { ...to.choices } }));
      changed();
    },
    canPutBack: () => before() !== undefined,
    putBack(): void {
      const to = before();
      setBefore(undefined);
      if (to) setEntered(reconcile(to));
      changed();
    },
  };
}

export type Bench = ReturnType<typeof createBench>;
