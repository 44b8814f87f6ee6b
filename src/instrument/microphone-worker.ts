import { createClickListener, type ClickEvent } from '../signal/click-watch';
import { createListener, type ListenerEvent } from '../signal/listener';
import { createRateCheck, PLUCKED, type Opening } from './microphone-blocks';

/** From the worker to the page. */
export type Heard = ListenerEvent | ClickEvent | { readonly kind: 'rate'; readonly off: boolean };

const tell = (heard: Heard): void => postMessage(heard);

/** What is to be done where a person says that a pluck has just sounded. */
let plucked: (() => void) | undefined;

/** Takes block after block, tells what was heard. */
function listenerOf({ ear, rate }: Opening): (block: Float32Array) => readonly Heard[] {
  if (ear === 'clicks') {
    const clicks = createClickListener(rate);
    return (block) => clicks.push(block);
  }
  const listener = createListener(rate);
  plucked = () => listener.plucked();
  return (block) => listener.push(block);
}

const open = (data: Opening): void => {
  const hear = listenerOf(data);
  const isOff = createRateCheck(data.rate);
  let wasOff = false;
  data.port.onmessage = ({ data: block }: MessageEvent<Float32Array>) => {
    const off = isOff(block.length, performance.now());
    if (off !== wasOff) tell({ kind: 'rate', off });
    wasOff = off;
    hear(block).forEach(tell);
  };
};

addEventListener('message', ({ data }: MessageEvent<Opening | typeof PLUCKED>) => {
  if (data === PLUCKED) plucked?.();
  else open(data);
});
