import './level.css';
import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import { angle, slope } from '../../../quantity/kinds';
import { parseQuantity } from '../../../quantity/parse';
import type { Measure } from '../../../quantity/unit';
import { ENOUGH_PAIRS } from '../../../signal/level-reversal';
import type { PanelProps } from '../panel';
import { SlopeAssumed } from './assumed';
import { LayingDrawing } from './drawing';
import { SlopeResult } from './result';
import { createSlopeSession } from './session';

const LAYING = '1';
const DIRECTION = '3';

/** The phone as a level: two readings half a turn apart, from which its own error drops out. */
export function SlopePanel(props: PanelProps) {
  const [laying, setLaying] = createSignal(LAYING);
  const [direction, setDirection] = createSignal(DIRECTION);
  const limit = (text: string, measure: Measure, usual: string) => {
    const read = (typed: string) => parseQuantity(typed, measure.kind, measure.unit, props.mark);
    const typed = read(text);
    if (typed.ok && typed.value >= 0) return { value: typed.value, problem: undefined };
    const problem = typed.ok ? 'A limit is not negative.' : typed.reason;
    const instead = read(usual);
    return { value: instead.ok ? instead.value : 0, problem: `${problem} Until then ${usual} is taken.` };
  };
  const layingLimit = createMemo(() => limit(laying(), slope.mm_m, LAYING));
  const directionLimit = createMemo(() => limit(direction(), angle.deg, DIRECTION));
  const session = createSlopeSession(() => ({ laying: layingLimit().value, direction: directionLimit().value }));
  const count = () => session.readings().length;
  const turned = () => count() % 2 === 1;
  const pairs = () => Math.floor(count() / 2);
  const progress = () => {
    const now = session.watch();
    return now?.state === 'reading' ? now.done : 0;
  };

  return (
    <div class="level">
      <Show when={session.problem()}>{(why) => <p class="problem">{why()}</p>}</Show>
      <Show
        when={session.running() === 'on'}
        fallback={
          <>
            <p>
              Lay the phone on its back along what is to be level, read, turn it half a turn, read again: the sensor’s
              own error drops out. Take off a case that is not flat; let a camera bump hang over the edge. On something
              narrow, lay a straight bar such as a steel rule across it first.
            </p>
            <p class="problem">
              Motors off, nozzle and bed cold, before a phone is laid on a machine: a homing move throws it down.
            </p>
            <button
              type="button"
              class="button button-main level-key"
              disabled={session.running() === 'starting'}
              onClick={() => session.start()}
            >
              {session.running() === 'starting' ? 'Waiting for the sensor…' : 'Start the level'}
            </button>
            <p class="faint">A slope can always be typed by hand instead: from two heights, or a level with a scale.</p>
          </>
        }
      >
        <h2>{turned() ? 'Second reading' : `First reading${pairs() > 0 ? ` of pair ${pairs() + 1}` : ''}`}</h2>
        <LayingDrawing turned={turned()} again={pairs() > 0} />
        <p>
          {turned()
            ? 'Turn the phone half a turn, flat on what it lies on, to the same place: its earpiece now points left.'
            : 'Stand in front. Lay the phone along the bar, screen up, its earpiece to the right.'}{' '}
          Press the key and take your hand away.
        </p>
        <Switch>
          <Match when={session.watch()}>
            {(now) => (
              <div class="level-watch" role="status">
                <strong>
                  <Switch fallback="Moving: wait for it to lie still…">
                    <Match when={now().state === 'settling'}>Coming to rest…</Match>
                    <Match when={now().state === 'reading'}>Still. Reading, hands off…</Match>
                  </Switch>
                </strong>
                <progress max={1} value={progress()} aria-label="Part of the reading done" />
                <button type="button" class="button" onClick={() => session.stop()}>
                  Stop
                </button>
              </div>
            )}
          </Match>
          <Match when={session.doubtful()}>
            {(one) => (
              <div role="alert">
                <p class="problem">
                  By its own heading the phone was turned by {one().turned}°, not by half a turn. A reading without the
                  turn would call anything level.
                </p>
                <div class="row">
                  <button type="button" class="button" onClick={() => session.read()}>
                    Read again
                  </button>
                  <button type="button" class="button" onClick={() => session.keepDoubtful()}>
                    I did turn it: keep the reading
                  </button>
                </div>
              </div>
            )}
          </Match>
          <Match when={true}>
            <button type="button" class="button button-main level-key" onClick={() => session.read()}>
              Read
            </button>
          </Match>
        </Switch>
      </Show>
      <div role="status">
        <Show when={session.level()}>
          {(level) => <SlopeResult level={level()} pairs={pairs()} mark={props.mark} />}
        </Show>
      </div>
      <Show when={session.level()}>
        {(level) => (
          <>
            <button
              type="button"
              class="button button-main level-key"
              onClick={() => props.onTake({ value: level().slope, halfWidth: level().halfWidth })}
            >
              {props.take}
            </button>
            <p class="faint small">
              Plus means that the right end is higher. More pairs make the ± smaller; from {ENOUGH_PAIRS} on, their own
              spread says how well they repeat.
            </p>
          </>
        )}
      </Show>
      <Show when={count() > 0}>
        <div class="row">
          <button type="button" class="button" onClick={() => session.strikeLast()}>
            Strike the last reading
          </button>
          <button type="button" class="button" onClick={() => session.clear()}>
            Start over
          </button>
        </div>
      </Show>
      <details class="section">
        <summary>What is assumed</summary>
        <For
          each={[
            {
              label: 'One laying differs from the next by up to ±, mm/m',
              text: laying,
              set: setLaying,
              limit: layingLimit,
            },
            {
              label: 'Long edge off the bar’s direction by up to ±, °',
              text: direction,
              set: setDirection,
              limit: directionLimit,
            },
          ]}
        >
          {(field) => (
            <SlopeAssumed
              label={field.label}
              text={field.text()}
              problem={field.limit().problem}
              onText={(text) => field.set(text)}
            />
          )}
        </For>
        <p class="faint small">
          95 % limits; common practice, no source. Besides: the sensor’s axis within 2° of the phone’s edge, its scale
          within 3 %. Reversal: Evans, Hocken & Estler, CIRP Annals 1996 (from memory).
        </p>
      </details>
    </div>
  );
}
