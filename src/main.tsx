import { render } from 'solid-js/web';
import { fetchAhead } from './engine/ahead';
import { App } from './app/shell/app';
import './ui/style.css';

fetchAhead(location.hash);
const root = document.getElementById('app');
if (root) render(() => <App />, root);
