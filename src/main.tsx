import { render } from 'solid-js/web';
import { App } from './app/shell/app';
import './ui/style.css';

const root = document.getElementById('app');
if (root) render(() => <App />, root);
