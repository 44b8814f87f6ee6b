import { createSignal, For, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { A, useNavigate, useParams } from '@solidjs/router';
import type { PhoneInstrument } from '../../engine/calculator';
import { listed } from '../../engine/list';
import { useRecords } from '../desk/context';
import { handOn, type Taken } from '../desk/handed';
import { phones } from './phones';
import say from './words/en';

const isPhone = (name: string | undefined): name is PhoneInstrument =>
  name !== undefined && Object.hasOwn(phones, name);

/** The checks that have a line for what was measured; a tap takes it there. */
function UseIn(props: { phone: PhoneInstrument; taken: Taken }) {
  const navigate = useNavigate();
  const take = (id: string) => {
    handOn(id, props.phone, props.taken);
    navigate(`/check/${id}`);
  };
  return (
    <section class="section" role="status">
      <h2>{say.screen.into}</h2>
      <div class="row">
        <For each={listed.filter((entry) => entry.phone?.includes(props.phone))}>
          {(entry) => (
            <button type="button" class="button" onClick={() => take(entry.id)}>
              {entry.title}
            </button>
          )}
        </For>
      </div>
    </section>
  );
}

/** One of the phone's instruments by itself; what it measures can be taken to a check with one tap. */
export function PhoneScreen() {
  const records = useRecords();
  const params = useParams();
  const [taken, setTaken] = createSignal<Taken>();
  const phone = () => (isPhone(params.instrument) ? params.instrument : undefined);
  return (
    <main>
      <Show
        when={phone()}
        keyed
        fallback={
          <>
            <h1>{say.screen.unknown}</h1>
            <p>
              <A href="/">{say.screen.all}</A>
            </p>
          </>
        }
      >
        {(name) => (
          <>
            <h1>{phones[name].title}</h1>
            <p>{phones[name].question}</p>
            <Dynamic
              component={phones[name].Panel}
              mark={records.settings().mark}
              take={say.screen.take}
              onTake={(one: Taken) => setTaken(one)}
            />
            <Show when={taken()}>{(one) => <UseIn phone={name} taken={one()} />}</Show>
          </>
        )}
      </Show>
    </main>
  );
}
