import { render } from 'solid-js/web';
import { App } from './app/shell/app';
import { watchAddress } from './app/shell/address';
import './ui/style.css';

void import('./engine/ahead').then(({ fetchAhead }) => fetchAhead(location.hash)).catch(() => undefined);
const root = document.getElementById('app');
if (root) {
  // The rescue may have come up meanwhile.
  root.replaceChildren();
  watchAddress();
  render(() => <App />, root);
}
