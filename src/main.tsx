import { render } from 'solid-js/web';
import { fetchAhead } from './engine/ahead';
import { App } from './app/shell/app';
import { watchAddress } from './app/shell/address';
import './ui/style.css';

fetchAhead(location.hash);
const root = document.getElementById('app');
if (root) {
  // The rescue may have come up meanwhile.
  root.replaceChildren();
  watchAddress();
  render(() => <App />, root);
}
