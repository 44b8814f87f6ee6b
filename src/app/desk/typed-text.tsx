import { createEffect, createResource, createSignal, on, onCleanup, Show, untrack } from 'solid-js';
import { createBehind } from './behind';
import { useRecords } from './context';
import type { TypedAt } from './records/typed';
import say from './words/en';

/** A text that is being typed, kept behind the hand and followed between tabs. */
export interface TypedText {
  readonly text: () => string;
  readonly type: (words: string) => void;
  /** What was typed in the same field elsewhere at the same time; undefined where nothing was. */
  readonly other: () => string | undefined;
  readonly settle: (take: boolean) => void;
  /** The text has become part of a record: forgets it, unless something else was typed in its place. */
  readonly used: () => Promise<void>;
  /** Typed here, or begun with, and not what the store holds. */
  readonly ours: () => boolean;
}

/** @param start what the field begins with where a link brought it: kept only once the person goes on typing */
export function createTypedText(at: () => TypedAt, start = ''): TypedText {
  const records = useRecords();
  const [text, setText] = createSignal(start);
  const [base, setBase] = createSignal('');
  const ours = () => text() !== base();
  const [found] = createResource(
    () => (records.ready() ? { tick: records.typedTick() } : undefined),
    () => records.typedIn(at()),
  );
  const [left, setLeft] = createSignal(false);
  /** What the person had typed before a link brought something else; undefined once they go on from the link's words. */
  const own = () => {
    const kept = found.latest?.text ?? '';
    return !left() && start !== '' && text() === start && ours() && kept.trim() !== '' && kept !== start
      ? kept
      : undefined;
  };
  const behind = createBehind(async () => {
    const [mine, from] = [untrack(text), untrack(base)];
    setBase(mine);
    const kept = await records.keepTyped(untrack(at), mine, from);
    if (!kept) setBase(from);
    return kept;
  });
  // What the hand is at is left to it: the next write sets what was found beside it.
  createEffect(
    on(
      () => found.latest,
      (now) => {
        if (untrack(ours) || !now) return;
        setBase(now.text);
        setText(now.text);
      },
    ),
  );
  onCleanup(() => behind.end());
  return {
    text,
    ours,
    type: (words) => {
      setText(words);
      behind.note();
    },
    other: () => found.latest?.other ?? own(),
    settle: (take) => {
      const mine = untrack(own);
      if (mine === undefined) {
        void behind.flush().then(() => records.settleTyped(at(), take));
        return;
      }
      setLeft(!take);
      if (!take) return;
      setBase(mine);
      setText(mine);
    },
    used: async () => {
      await behind.flush();
      await records.forgetTyped(at(), text());
    },
  };
}

/** Shows what was typed elsewhere in the same field, to be taken or left. */
export function OtherText(props: { typed: TypedText }) {
  return (
    <Show when={props.typed.other()}>
      {(words) => (
        <div class="panel no-print" role="status">
          <p>{say.typed.other(words())}</p>
          <div class="row">
            <button type="button" class="button" onClick={() => props.typed.settle(true)}>
              {say.typed.take}
            </button>
            <button type="button" class="button" onClick={() => props.typed.settle(false)}>
              {say.typed.leave}
            </button>
          </div>
        </div>
      )}
    </Show>
  );
}

/**
 * A text that belongs to a record, typed: kept behind the hand by `keep`; what another tab wrote shows where nothing is being
 * typed here.
 */
export function createBehindText(stored: () => string, keep: (text: string) => Promise<boolean>) {
  const records = useRecords();
  const [mine, setMine] = createSignal<string>();
  const behind = createBehind(async () => {
    const text = untrack(mine);
    // What fails for another reason than the storage has been told; trying again would not help.
    return text === undefined || (await keep(text)) || untrack(records.keeping);
  });
  createEffect(on(stored, (now) => untrack(mine) === now && setMine(undefined), { defer: true }));
  onCleanup(() => behind.end());
  return {
    text: () => mine() ?? stored(),
    type: (words: string): void => {
      setMine(words);
      behind.note();
    },
  };
}
