import '../sound/sound.css';
import { For, Match, Show, Switch } from 'solid-js';
import { formatMeasured } from '../../../quantity/format';
import { ratio } from '../../../quantity/kinds';
import { Fold } from '../../../ui/fold';
import type { PanelProps } from '../panel';
import { EarLevel } from '../sound/level';
import { EarDoubts, EarTrouble } from '../sound/trouble';
import { createCounting, type Counting } from './counting';
import { ClicksStrip } from './strip';
import say from './words/en';

const MINUTE = 60;

/** How far the listening is, and the count with its doubt. */
function ClicksReading(props: { counting: Counting; mark: PanelProps['mark'] }) {
  const phase = () => props.counting.ear.phase();
  const rate = () =>
    formatMeasured(counted().rate * MINUTE, counted().rateHalfWidth * MINUTE, ratio.one.unit, { mark: props.mark });
  const counted = () => props.counting.counted();
  return (
    <section role="status" aria-label={say.reading.label}>
      <p class="ear-phase">
        <Switch fallback={say.reading.off}>
          <Match when={phase() === 'opening'}>{say.reading.opening}</Match>
          <Match when={phase() === 'listening'}>{say.reading.listening}</Match>
          <Match when={phase() === 'away'}>{say.reading.away}</Match>
        </Switch>
      </p>
      <p class="ear-result">
        {say.reading.count(counted().count, counted().halfWidth)}{' '}
        <span class="small faint">{say.reading.over(props.counting.seconds().toFixed(0))}</span>
      </p>
      <Show when={props.counting.isLongEnough() && counted().count > 0}>
        <p>{say.reading.rate(rate())}</p>
      </Show>
      <Show when={props.counting.isFaint()}>
        <p class="due small">{say.reading.faint}</p>
      </Show>
      <Show when={props.counting.isMasked()}>
        <p class="due small">{say.reading.masked}</p>
      </Show>
    </section>
  );
}

/** The keys that listen, stop and hand the count over. */
function ClicksKeys(props: { counting: Counting; take: string; onTake: () => void }) {
  const isDone = () => !props.counting.ear.isOn() && props.counting.isLongEnough();
  return (
    <div class="ear-keys">
      <Show
        when={props.counting.ear.isOn()}
        fallback={
          <button
            type="button"
            class="button"
            classList={{ 'button-main': !isDone() }}
            onClick={() => props.counting.start()}
          >
            {props.counting.seconds() > 0 ? say.keys.again : say.keys.listen}
          </button>
        }
      >
        <button type="button" class="button button-main" onClick={() => props.counting.stop()}>
          {say.keys.stop}
        </button>
      </Show>
      <Show when={isDone()}>
        <button type="button" class="button button-main" onClick={() => props.onTake()}>
          {props.take}
        </button>
      </Show>
    </div>
  );
}

/** Counts by ear how often a feeder ticks, from a tap to the next. */
export function ClicksPanel(props: PanelProps) {
  const counting = createCounting();
  const { ear } = counting;
  const isFresh = () => counting.seconds() === 0 && !ear.isOn() && ear.trouble() === undefined;
  const take = (): void => {
    const { count, halfWidth } = counting.counted();
    props.onTake({ value: count, halfWidth });
  };
  return (
    <div class="clicks">
      <Show when={!ear.isOn()}>
        <section class="cautions" aria-label={say.cautions.label}>
          <b>{say.cautions.first}</b>
          <ul>
            <For each={say.cautions.list}>{(one) => <li>{one}</li>}</For>
          </ul>
        </section>
      </Show>
      <EarTrouble ear={ear} instead={say.typeInstead} />
      <Show when={!isFresh()}>
        <ClicksReading counting={counting} mark={props.mark} />
        <ClicksStrip counting={counting} />
      </Show>
      <Show when={ear.phase() === 'listening'}>
        <EarLevel level={ear.level()} />
      </Show>
      <EarDoubts ear={ear} effect={say.meddled} />
      <ClicksKeys counting={counting} take={props.take} onTake={take} />
      <Fold title={say.how.title} open={isFresh()}>
        <ol>
          <For each={say.how.steps}>{(step) => <li>{step}</li>}</For>
        </ol>
        <p class="small faint">{say.how.notKept}</p>
      </Fold>
      <Show when={ear.trouble() === undefined}>
        <p class="small faint">{say.typeInstead}</p>
      </Show>
    </div>
  );
}
