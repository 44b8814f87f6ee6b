import { render } from 'solid-js/web';
import { fetchPart } from './app/desk/parts/fetch-part';
import { App } from './app/shell/app';
import { watchAddress } from './app/shell/address';
import './ui/style.css';

const check = /^#\/check\/([\w-]+)/.exec(location.hash)?.[1];
if (check !== undefined) {
  void fetchPart(() => import('./engine/ahead')).then(
    ({ fetchAhead }) => fetchAhead(check),
    // The screen asks for the check itself.
    () => undefined,
  );
}
const root = document.getElementById('app');
if (root) {
  // The rescue may have come up meanwhile.
  root.replaceChildren();
  watchAddress();
  render(() => <App />, root);
}
