import { nextOrdinal } from '../../../machine/edit';
import { typedKey } from '../../../machine/keys';
import type { Photo, Typed } from '../../../machine/schema';
import { VERSION } from '../../../machine/version';
import type { Device } from './device';

/** A field on a case's screens; both null for a case that is not opened yet. */
export interface TypedAt {
  readonly machine: string | null;
  readonly case: string | null;
  readonly field: string;
}

type Said = Pick<Typed, 'text'> & Partial<Pick<Typed, 'other' | 'picture'>>;

const keyOf = (at: TypedAt) => typedKey(at.machine, at.case, at.field);

/** What is being typed on a case's screens, until it is part of the case: field by field. */
export function typedRecords({ opened, told, toldBehind }: Device) {
  const write = async (at: TypedAt, edit: (old: Typed | undefined) => Said): Promise<boolean> => {
    const changed = new Date().toISOString();
    const result = await (
      await opened
    ).change(keyOf(at), (old): Typed => {
      const { other, picture = old?.picture, text } = edit(old);
      return {
        ...{ v: VERSION, type: 'typed', ...at, text, changed, ordinal: nextOrdinal(old?.ordinal ?? 0) },
        ...(other === undefined ? {} : { other }),
        ...(picture === undefined ? {} : { picture }),
      };
    });
    return toldBehind(result);
  };
  return {
    typedIn: async (at: TypedAt): Promise<Typed | undefined> => told(await (await opened).get(keyOf(at))),
    /**
     * Keeps what was typed over `base`. Where something else was typed there meanwhile, in another tab or before a link was opened,
     * that is kept beside it.
     * @returns false where there is no room at the moment
     */
    keepTyped: (at: TypedAt, text: string, base: string): Promise<boolean> =>
      write(at, (old) => {
        const clash = old && old.text !== base && old.text !== text && old.text.trim() !== '' ? old.text : old?.other;
        return { text, ...(clash === undefined ? {} : { other: clash }) };
      }),
    /** Takes the other text for this one, or (false) leaves it for good. */
    settleTyped: (at: TypedAt, take: boolean): Promise<boolean> =>
      write(at, (old) => (take ? { text: old?.other ?? '', other: old?.text ?? '' } : { text: old?.text ?? '' })),
    keepTypedPicture: (at: TypedAt, picture: Pick<Photo, 'width' | 'height' | 'jpeg'>): Promise<boolean> =>
      write(at, () => ({ text: '', picture })),
    /** Forgets what has become part of a case; what was typed since, or elsewhere, stays. */
    forgetTyped: async (at: TypedAt, used: string): Promise<void> => {
      const store = await opened;
      const found = told(await store.get(keyOf(at)));
      if (found?.text !== used) return;
      if (found.other === undefined) told(await store.remove(keyOf(at)));
      else await write(at, () => ({ text: found.other ?? '' }));
    },
  };
}
