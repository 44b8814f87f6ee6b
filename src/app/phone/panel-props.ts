import type { DecimalMark } from '../../quantity/parse';
import type { Taken } from '../desk/handed';

/** What every panel of an instrument gets. */
export interface PanelProps {
  readonly mark: DecimalMark;
  /** Words on the key that hands the measurement over. */
  readonly take: string;
  readonly onTake: (taken: Taken) => void;
}
