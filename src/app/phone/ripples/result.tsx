import { Show } from 'solid-js';
import { formatMeasured, formatNumber } from '../../../quantity/format';
import { frequency } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import { ringing, type RippleFinding, type RipplesFound } from '../../../signal/ripple';
import type { Taken } from '../../desk/handed';
import { ProfileChart } from '../photo/profile-chart';
import type { Read } from '../photo/scale';
import { Take } from '../photo/take';
import shared from '../photo/words/en';
import type { Speed } from './speed';
import say from './words/en';

/** Spacing, frequency and how they die away, with their doubts. */
function Found(props: { found: RipplesFound; speed: Read<Speed>; unit: Unit; mark: DecimalMark }) {
  const rings = () => {
    if (!props.speed.ok) return say.result.noSpeed;
    const { value, half } = props.speed.value;
    const [f, doubt] = ringing([value, half], [props.found.period, props.found.halfWidth]);
    return say.result.frequency(formatMeasured(f, doubt, frequency.Hz.unit, { mark: props.mark }));
  };
  const dies = () =>
    ((halving) =>
      halving
        ? say.result.halving(`${formatNumber(halving.value, 2, props.mark)} ± ${formatNumber(halving.halfWidth, 2, props.mark)}`) // prettier-ignore
        : say.result.noHalving)(props.found.halving);
  return (
    <>
      <p class="reading-large">
        {formatMeasured(props.found.period, props.found.halfWidth, props.unit, { mark: props.mark })}
      </p>
      <p>{rings()}</p>
      <p>
        {say.result.interval(formatNumber(props.found.ripples, 2, props.mark))} {dies()}
      </p>
    </>
  );
}

/** The ripples' spacing with its uncertainty and the profile; or why there is none. */
export function RipplesResult(props: {
  finding: RippleFinding;
  speed: Read<Speed>;
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
          {(one) => <Found found={one()} speed={props.speed} unit={props.unit} mark={props.mark} />}
        </Show>
        <Show when={refused()}>{(one) => <p class="problem">{say.refusal[one().reason]}</p>}</Show>
      </div>
      <Show when={found()}>{(one) => <Take {...props} found={one()} fit={say.result.fit} />}</Show>
      <Show when={props.finding.profile}>
        {(profile) => <ProfileChart profile={profile()} crests={[]} unit={props.unit} mark={props.mark} />}
      </Show>
      <p class="small">{say.result.caliper}</p>
    </section>
  );
}
