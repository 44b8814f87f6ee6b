import type { DecimalMark } from '../../../quantity/parse';
import type { Taken } from '../../desk/handed';
import { adviceOn, sharesOf, type Shares } from './shares';

/** The key that takes what was found, and what its doubt comes from. */
export function Take(props: {
  found: { readonly period: number; readonly halfWidth: number; readonly shares: Shares };
  /** What the doubt of the fit itself is called. */
  fit: string;
  stale: boolean;
  mark: DecimalMark;
  take: string;
  onTake: (taken: Taken) => void;
}) {
  return (
    <>
      <button
        type="button"
        class="button button-main"
        disabled={props.stale}
        onClick={() => props.onTake({ value: props.found.period, halfWidth: props.found.halfWidth })}
      >
        {props.take}
      </button>
      <p class="small">
        {adviceOn(props.found.shares, props.fit)} {sharesOf(props.found.shares, props.mark)}
      </p>
    </>
  );
}
