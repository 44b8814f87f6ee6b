import { Show } from 'solid-js';
import { formatMeasured, formatNumber } from '../../../quantity/format';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import type { RidgeFinding, RidgesFound, Strip } from '../../../signal/ridge-types';
import type { Taken } from '../../desk/handed';
import { PeriodsChart } from './periods-chart';
import { ProfileChart } from '../photo/profile-chart';
import { Take } from '../photo/take';
import shared from '../photo/words/en';
import say from './words/en';

const DEGREE = Math.PI / 180;
/** A tilt below this is not worth a word. */
const LEAST_TILT = DEGREE;

/** Where the ridges lie along the profile, m: evenly on the wall, the first where it is in the picture. */
function crestsAlong(found: RidgesFound, strip: Strip): readonly number[] {
  const size = (strip.to.x - strip.from.x) ** 2 + (strip.to.y - strip.from.y) ** 2;
  const shares = found.crests.map(({ from, to }) => {
    const middle = { x: (from.x + to.x) / 2 - strip.from.x, y: (from.y + to.y) / 2 - strip.from.y };
    return (middle.x * (strip.to.x - strip.from.x) + middle.y * (strip.to.y - strip.from.y)) / size;
  });
  const length = found.profile.step * (found.profile.values.length - 1);
  const [first = 0, second = first + 1 / found.ridges] = shares;
  const pitch = length / found.ridges;
  const start = (first / (second - first)) * pitch;
  return shares.map((_, k) => start + k * pitch).filter((at) => at >= 0 && at <= length);
}

/** What the interval holds, over how many ridges. */
function intervalOf({ ridges, tilt }: RidgesFound, mark: DecimalMark): string {
  const count = formatNumber(ridges, 3, mark);
  const off = Math.abs(tilt);
  return off > LEAST_TILT
    ? say.result.intervalTilted(count, formatNumber(off / DEGREE, 2, mark))
    : say.result.interval(count);
}

/** The period with its uncertainty, the profile and the spectrum; or why there is none. */
export function RidgesResult(props: {
  finding: RidgeFinding;
  /** The strip it was found in. */
  strip: Strip;
  /** The marks were moved or the distance changed since. */
  stale: boolean;
  unit: Unit;
  mark: DecimalMark;
  take: string;
  onTake: (taken: Taken) => void;
}) {
  const found = () => (props.finding.status === 'found' ? props.finding : undefined);
  const refused = () => (props.finding.status === 'refused' ? props.finding : undefined);
  return (
    <section class="section" aria-label={shared.result.title}>
      <h2>{shared.result.title}</h2>
      <Show when={props.stale}>
        <p class="problem">{shared.result.stale}</p>
      </Show>
      <div role="status">
        <Show when={found()}>
          {(one) => (
            <>
              <p class="reading-large">
                {formatMeasured(one().period, one().halfWidth, props.unit, { mark: props.mark })}
              </p>
              <p>{intervalOf(one(), props.mark)}</p>
            </>
          )}
        </Show>
        <Show when={refused()}>{(one) => <p class="problem">{say.refusal[one().reason]}</p>}</Show>
      </div>
      <Show when={found()}>{(one) => <Take {...props} found={one()} fit={say.result.fit} />}</Show>
      <Show when={props.finding.profile}>
        {(profile) => (
          <ProfileChart
            profile={profile()}
            crests={((one) => (one ? crestsAlong(one, props.strip) : []))(found())}
            unit={props.unit}
            mark={props.mark}
          />
        )}
      </Show>
      <Show when={props.finding.spectrum}>
        {(spectrum) => (
          <PeriodsChart spectrum={spectrum()} lines={props.finding.lines} unit={props.unit} mark={props.mark} />
        )}
      </Show>
      <p class="small">{say.result.caliper}</p>
    </section>
  );
}
