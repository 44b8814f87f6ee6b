import type { DecimalMark } from '../../quantity/parse';
import type { Taken } from '../desk/handed';

/** What every instrument's panel is given, by the dialog over a sheet and by the screen of its own. */
export interface PanelProps {
  readonly mark: DecimalMark;
  /** Words on the key that hands the measurement over. */
  readonly take: string;
  readonly onTake: (taken: Taken) => void;
}
