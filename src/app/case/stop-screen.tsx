import { createMemo, For, Show } from 'solid-js';
import { A, useLocation, useNavigate } from '@solidjs/router';
import { dangerIn } from '../../diagnosis/danger';
import { firstActs } from '../../diagnosis/stop';
import { LIMITS } from '../../machine/limits';
import { safetyOf, tickLines } from './safety';
import { complaintAddress, StopGate, type Said } from './stop-gate';
import say from './words/en';
import './case.css';
import '../../ui/print.css';

/** The gate by itself, for whoever stands beside the machine: it came with a link, and what is ticked goes back with one. */
export function StopScreen() {
  const location = useLocation();
  const navigate = useNavigate();
  const said = createMemo((): Said => {
    const query = new URLSearchParams(location.search);
    return {
      said: (query.get('said') ?? '').slice(0, LIMITS.note),
      who: (query.get('who') ?? '').slice(0, LIMITS.name),
      tick: safetyOf(query.get('tick')),
    };
  });
  // Sent as a danger, it is one, whatever a message left of the words.
  const danger = () => dangerIn(said().said) ?? { first: 'unplug' as const, shock: false };
  return (
    <main>
      <h1 class="no-print">{say.stop.title}</h1>
      <Show when={said().said}>
        <blockquote class="case-complaint no-print">{say.quote(said().said)}</blockquote>
      </Show>
      <div class="no-print">
        <StopGate
          {...said()}
          danger={danger()}
          paper
          onTick={(tick) => navigate(complaintAddress('stop', { ...said(), tick }), { replace: true, scroll: false })}
        />
        <p class="section">
          <A class="button" href={complaintAddress('case/new', said())}>
            {say.fresh.title}
          </A>
        </p>
      </div>
      <article class="card check-card case-sheet case-paper">
        <h2>{say.stop.title}</h2>
        <For each={tickLines(firstActs(danger().first))}>{(line) => <p>{line}</p>}</For>
        <p>{say.quote(said().said)}</p>
      </article>
    </main>
  );
}
