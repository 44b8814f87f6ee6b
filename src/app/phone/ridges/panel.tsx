import type { OpenPicture } from '../../../instrument/picture';
import type { RidgeFinding } from '../../../signal/ridge-types';
import type { PanelProps } from '../panel';
import { Asking } from '../photo/asking';
import { createLooking, type Seek } from '../photo/looking';
import { createMarking } from '../photo/marking';
import { PhotoPanel } from '../photo/panel';
import { MarkedPicture } from '../photo/picture';
import { ALL_STANDARDS } from '../photo/scale';
import { RidgesHow } from './how';
import { RidgesResult } from './result';
import say from './words/en';

const seekIn =
  (picture: OpenPicture): Seek<RidgeFinding> =>
  ({ strip, scale, layer }, stop, tell) =>
    picture.ridges(strip, scale, layer === undefined ? {} : { layer }, stop, tell);

/** Each crest, as a line over the picture. */
const crestsOf = (finding: RidgeFinding | undefined) =>
  finding?.status === 'found' ? finding.crests.map(({ from, to }) => [from, to] as const) : [];

/** The spacing of a wall's ridges, from a photo of it. */
export function RidgesPanel(props: PanelProps) {
  return (
    <PhotoPanel title={say.how.title} How={RidgesHow}>
      {(opened) => {
        const marking = createMarking(opened);
        const looking = createLooking(seekIn(opened), marking.marks, () => props.mark);
        return (
          <>
            <MarkedPicture
              picture={opened}
              marking={marking}
              hints={say.hints}
              lines={crestsOf(looking.isStale() ? undefined : looking.found()?.finding)}
            />
            <Asking looking={looking} mark={props.mark} label={say.looking} standards={ALL_STANDARDS}>
              {(found) => (
                <RidgesResult
                  finding={found.finding}
                  strip={found.strip}
                  stale={looking.isStale()}
                  unit={looking.scale.unit()}
                  mark={props.mark}
                  take={props.take}
                  onTake={(taken) => props.onTake(taken)}
                />
              )}
            </Asking>
          </>
        );
      }}
    </PhotoPanel>
  );
}
