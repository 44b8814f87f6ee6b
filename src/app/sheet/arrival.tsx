import { batch, createEffect, createMemo, createSignal, For, on, onCleanup, Show, untrack } from 'solid-js';
import { useLocation, useNavigate, useParams } from '@solidjs/router';
import type { Calculator } from '../../engine/calculator';
import { decodeLink, hasValues, queryNow, type Decoded } from '../../engine/link';
import type { Bench } from './bench';
import { useRecords } from '../desk/context';
import type { Records } from '../desk/records';
import say from './words/en';

/** A link that was opened: held until the person goes on from its numbers or puts their own back. */
export interface Arrival {
  readonly id: string;
  readonly decoded: Decoded;
  spent: boolean;
}

/**
 * Follows the address of the checks' screen: takes the values out of it, so that a reload shows the draft. Where the link is
 * understood, the machine goes off the bench of this tab, so that none of its values stand in for the link's typical ones;
 * nothing is written before the person goes on from its numbers.
 *
 * @param calculator the check that the address names, once it is loaded
 */
export function createArrivals(calculator: () => Calculator | undefined) {
  const records = useRecords();
  const location = useLocation();
  const params = useParams();
  const navigate = useNavigate();
  const [arrival, setArrival] = createSignal<Arrival>();
  const leave = () => {
    const last = arrival();
    if (last && !last.spent && last.decoded.ok) records.linkBench.decline();
  };
  createEffect(() => {
    const { search, pathname } = location;
    const [{ id }, check] = [params, calculator()];
    if (!records.ready() || id === undefined || !check || !hasValues(search)) return;
    untrack(() =>
      batch(() => {
        const decoded = decodeLink(check, queryNow(id, search), records.settings().mark);
        if (decoded.ok) records.linkBench.layAside();
        setArrival({ id, decoded, spent: false });
        navigate(pathname, { replace: true, scroll: false });
      }),
    );
  });
  // Another check, or another screen: a link that was only looked at has changed nothing.
  createEffect(
    on(
      () => params.id,
      () => {
        leave();
        setArrival(undefined);
      },
      { defer: true },
    ),
  );
  onCleanup(leave);
  const here = createMemo(() => (arrival()?.id === params.id ? arrival() : undefined));
  return {
    here,
    /** A link stands in the address and is not yet read. */
    pending: () => hasValues(location.search),
  };
}

/**
 * Puts an unspent link's values on the bench, over what stands there, which can be put back. Called while the sheet is
 * made, before it follows changes: what stands in the draft stays there until the person changes something.
 *
 * @returns what the link held, for the notice
 */
export function takeArrival(arrival: Arrival | undefined, bench: Bench, records: Records): Decoded | undefined {
  if (!arrival || arrival.spent) return undefined;
  const { decoded } = arrival;
  if (!decoded.ok) return decoded;
  bench.replace(decoded.values);
  const spend = () => {
    arrival.spent = true;
    records.linkBench.accept();
  };
  createEffect(on(bench.changes, spend, { defer: true }));
  return decoded;
}

/** Says what came with a link and what did not, and gives the person's own numbers and machine back. */
export function ArrivalNotice(props: { arrival: Arrival | undefined; decoded: Decoded | undefined; bench: Bench }) {
  const records = useRecords();
  const off = () => {
    const id = records.linkBench.off();
    if (id === null || records.onBench() !== null) return undefined;
    return records.machines().find((machine) => machine.id === id);
  };
  const reason = () => (props.decoded?.ok === false ? props.decoded.reason : undefined);
  const leftOut = () => (props.decoded?.ok ? props.decoded.leftOut : []);
  const stands = () => props.decoded?.ok === true && props.bench.canPutBack();
  const backOnBench = (id: string) => {
    if (props.arrival) props.arrival.spent = true;
    void records.choose(id);
  };
  return (
    <Show when={reason() !== undefined || leftOut().length > 0 || stands() || off()}>
      <div class="panel no-print" role="status">
        <Show when={reason()}>{(sentence) => <p class="problem">{sentence()}</p>}</Show>
        <Show when={stands()}>
          <p>{say.arrival.cameWithLink}</p>
        </Show>
        <Show when={leftOut().length > 0}>
          <ul>
            <For each={leftOut()}>{(sentence) => <li>{sentence}</li>}</For>
          </ul>
        </Show>
        <Show when={off()}>{(machine) => <p>{say.arrival.otherMachine(machine().name)}</p>}</Show>
        <div class="row">
          <Show when={stands()}>
            <button type="button" class="button" onClick={() => props.bench.putBack()}>
              {say.putBack}
            </button>
          </Show>
          <Show when={off()}>
            {(machine) => (
              <button type="button" class="button" onClick={() => backOnBench(machine().id)}>
                {say.arrival.machineBack(machine().name)}
              </button>
            )}
          </Show>
        </div>
      </div>
    </Show>
  );
}
