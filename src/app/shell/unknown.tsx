import { A } from '@solidjs/router';
import say from './words/en';

/** At an address that leads nowhere: says so, with a way on. */
export function Unknown() {
  return (
    <main>
      <h1>{say.unknown.title}</h1>
      <p>{say.unknown.why}</p>
      <p>
        <A class="button" href="/">
          {say.unknown.all}
        </A>
      </p>
    </main>
  );
}
