import { createLooking } from '../photo/looking';
import { createMarking } from '../photo/marking';
import { PhotoPanel } from '../photo/panel';
import { MarkedPicture } from '../photo/picture';
import type { OpenPicture } from '../../../instrument/picture';
import type { PanelProps } from '../panel';
import { Asking } from '../photo/asking';
import { ALL_STANDARDS } from '../photo/scale';
import { RidgesHow } from './how';
import { RidgesResult } from './result';
import say from './words/en';

/** The spacing of a wall's ridges, from a photo of it. */
export function RidgesPanel(props: PanelProps) {
  return (
    <PhotoPanel title={say.how.title} How={RidgesHow}>
      {(opened) => <Opened {...props} picture={opened} />}
    </PhotoPanel>
  );
}

function Opened(props: PanelProps & { picture: OpenPicture }) {
  const marking = createMarking(props.picture);
  const looking = createLooking(
    ({ strip, scale, layer }, stop, tell) =>
      props.picture.ridges(strip, scale, layer === undefined ? {} : { layer }, stop, tell),
    marking.marks,
    () => props.mark,
  );
  const lines = () => {
    const finding = looking.isStale() ? undefined : looking.found()?.finding;
    return finding?.status === 'found' ? finding.crests.map(({ from, to }) => [from, to] as const) : [];
  };
  return (
    <>
      <MarkedPicture picture={props.picture} marking={marking} hints={say.hints} lines={lines()} />
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
}
