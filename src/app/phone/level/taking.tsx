import { Match, Show, Switch } from 'solid-js';
import type { Watch } from '../../../signal/level-watch';
import { LayingDrawing } from './drawing';
import type { SlopeSession } from './session';
import say from './words/en';

/** Before the sensor runs: how it is done, and the key that starts it. */
export function SlopeStart(props: { session: SlopeSession }) {
  const isStarting = () => props.session.running() === 'starting';
  return (
    <>
      <p>{say.start.how}</p>
      <p class="problem">{say.start.caution}</p>
      <button
        type="button"
        class="button button-main level-key"
        disabled={isStarting()}
        onClick={() => props.session.start()}
      >
        {isStarting() ? say.start.waiting : say.start.key}
      </button>
      <p class="faint">{say.start.byHand}</p>
    </>
  );
}

/** A reading that is being taken: whether the phone lies still, and how far it is. */
function Watching(props: { watch: Watch; onStop: () => void }) {
  return (
    <div class="level-watch" role="status">
      <strong>
        <Switch fallback={say.reading.moving}>
          <Match when={props.watch.state === 'settling'}>{say.reading.settling}</Match>
          <Match when={props.watch.state === 'reading'}>{say.reading.reading}</Match>
        </Switch>
      </strong>
      <progress max={1} value={props.watch.state === 'reading' ? props.watch.done : 0} aria-label={say.reading.done} />
      <button type="button" class="button" onClick={() => props.onStop()}>
        {say.reading.stop}
      </button>
    </div>
  );
}

/** The next reading: how the phone is laid for it, and the key that takes it. */
export function SlopeTaking(props: { session: SlopeSession }) {
  const readings = () => props.session.readings;
  const isTurned = () => readings().isTurned();
  const title = () => {
    if (readings().isTurning()) return say.reading.second;
    return readings().pairs() > 0 ? say.reading.firstOfPair(readings().pairs() + 1) : say.reading.first;
  };
  const how = () => {
    if (readings().isTurning()) return isTurned() ? say.reading.turn : say.reading.turnBack;
    if (readings().pairs() === 0) return say.reading.lay;
    return isTurned() ? say.reading.againLeft : say.reading.againRight;
  };
  return (
    <>
      <h2>{title()}</h2>
      <LayingDrawing turned={isTurned()} again={readings().isTurning()} />
      <p>{how()}</p>
      <Switch>
        <Match when={props.session.watch()}>
          {(now) => <Watching watch={now()} onStop={() => props.session.stop()} />}
        </Match>
        <Match when={readings().doubtful()}>
          {(one) => (
            <div role="alert">
              <p class="problem">{say.reading.doubt(one().turned, one().wanted)}</p>
              <div class="row">
                <button type="button" class="button" onClick={() => props.session.read()}>
                  {say.reading.again}
                </button>
                <button type="button" class="button" onClick={() => readings().keepDoubtful()}>
                  {say.reading.keep}
                </button>
              </div>
            </div>
          )}
        </Match>
        <Match when={true}>
          <button type="button" class="button button-main level-key" onClick={() => props.session.read()}>
            {say.reading.key}
          </button>
        </Match>
      </Switch>
    </>
  );
}

/** Takes back the last reading, or all of them. */
export function SlopeUndo(props: { session: SlopeSession }) {
  return (
    <Show when={props.session.readings.count() > 0}>
      <div class="row">
        <button type="button" class="button" onClick={() => props.session.readings.strikeLast()}>
          {say.reading.strike}
        </button>
        <button type="button" class="button" onClick={() => props.session.readings.clear()}>
          {say.reading.startOver}
        </button>
      </div>
    </Show>
  );
}
