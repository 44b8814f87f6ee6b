import { createSignal, For, Show, Suspense } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { A, useNavigate, useParams } from '@solidjs/router';
import type { PhoneInstrument } from '../../engine/calculator';
import { listed } from '../../engine/list';
import { useRecords } from '../desk/context';
import { handOn, type Taken } from '../desk/handed';
import { phones } from './phone';

const isPhone = (name: string | undefined): name is PhoneInstrument =>
  name !== undefined && Object.hasOwn(phones, name);

/** One of the phone's instruments by itself; what it measures can be taken to a check with one tap. */
export function PhoneScreen() {
  const records = useRecords();
  const params = useParams();
  const navigate = useNavigate();
  const [taken, setTaken] = createSignal<Taken>();
  const phone = () => (isPhone(params.instrument) ? params.instrument : undefined);
  return (
    <main>
      <Show
        when={phone()}
        keyed
        fallback={
          <>
            <h1>No such instrument</h1>
            <p>
              <A href="/">All checks</A>
            </p>
          </>
        }
      >
        {(name) => (
          <>
            <h1>{phones[name].title}</h1>
            <p>{phones[name].question}</p>
            <Suspense fallback={<p>Fetching the instrument…</p>}>
              <Dynamic
                component={phones[name].Panel}
                mark={records.settings().mark}
                take="Use in a check"
                onTake={(one: Taken) => setTaken(one)}
              />
            </Suspense>
            <Show when={taken()}>
              {(one) => (
                <section class="section" role="status">
                  <h2>Use it in</h2>
                  <div class="row">
                    <For each={listed.filter((entry) => entry.phone?.includes(name))}>
                      {(entry) => (
                        <button
                          type="button"
                          class="button"
                          onClick={() => {
                            handOn(entry.id, name, one());
                            navigate(`/check/${entry.id}`);
                          }}
                        >
                          {entry.title}
                        </button>
                      )}
                    </For>
                  </div>
                </section>
              )}
            </Show>
          </>
        )}
      </Show>
    </main>
  );
}
