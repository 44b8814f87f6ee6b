import { Show } from 'solid-js';
import { formatMeasured, formatNumber } from '../../../quantity/format';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import type { RidgeFinding, RidgesFound, Strip } from '../../../signal/ridge-types';
import type { Taken } from '../../desk/handed';
import { ProfileChart, SpectrumChart } from './charts';
import { refusalWords } from './ridges-words';

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

/** Which source the doubt comes from mostly, and what would lessen it. */
function adviceOn({ shares }: RidgesFound): string {
  const { fit, marks, distance } = shares;
  if (marks >= fit && marks >= distance) {
    return 'Most of the doubt comes from the places of the scale marks: zoom in and set them again, further apart if you can, and have the rule close beside the strip.';
  }
  if (distance >= fit) {
    return 'Most of the doubt comes from the distance between the marks: a longer one, or one known better, lessens it.';
  }
  return 'Most of the doubt comes from the picture: more ridges in the strip, a wider strip or flatter light lessens it.';
}

const percent = (share: number, mark: DecimalMark) =>
  share < 1e-4 ? `under ${formatNumber(0.01, 2, mark)} %` : `${formatNumber(share * 100, 2, mark)} %`;

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
    <section class="section" aria-label="What the picture says">
      <h2>What the picture says</h2>
      <Show when={props.stale}>
        <p class="problem">Something was changed since. Look for the ridges again.</p>
      </Show>
      <div role="status">
        <Show when={found()}>
          {(one) => (
            <>
              <p class="reading-large">
                {formatMeasured(one().period, one().halfWidth, props.unit, { mark: props.mark })}
              </p>
              <p>
                From ridge to ridge, about 95 %. {formatNumber(one().ridges, 3, props.mark)} ridges in the strip
                <Show when={Math.abs(one().tilt) > LEAST_TILT}>
                  , {formatNumber(Math.abs(one().tilt) / DEGREE, 2, props.mark)}° off square to it (allowed for)
                </Show>
                .
              </p>
            </>
          )}
        </Show>
        <Show when={refused()}>{(one) => <p class="problem">{refusalWords[one().reason]}</p>}</Show>
      </div>
      <Show when={found()}>
        {(one) => (
          <>
            <button
              type="button"
              class="button button-main"
              disabled={props.stale}
              onClick={() => props.onTake({ value: one().period, halfWidth: one().halfWidth })}
            >
              {props.take}
            </button>
            <p class="small">
              {adviceOn(one())} Standard uncertainties: picture {percent(one().shares.fit, props.mark)}, marks{' '}
              {percent(one().shares.marks, props.mark)}, distance {percent(one().shares.distance, props.mark)}.
            </p>
          </>
        )}
      </Show>
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
          <SpectrumChart spectrum={spectrum()} lines={props.finding.lines} unit={props.unit} mark={props.mark} />
        )}
      </Show>
      <p class="small">
        A caliper always works too: from the crest of one ridge to that of another, N ridges on, divided by N.
      </p>
    </section>
  );
}
