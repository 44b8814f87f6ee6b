import { createListener, type Listener, type ListenerEvent } from '../signal/listener';
import { createRateCheck, PLUCKED, type Opening } from './microphone-blocks';

/** From the worker to the page. */
export type Heard = ListenerEvent | { readonly kind: 'rate'; readonly off: boolean };

const tell = (heard: Heard): void => postMessage(heard);

let listener: Listener | undefined;

const open = (data: Opening): void => {
  const ears = createListener(data.rate);
  listener = ears;
  const isOff = createRateCheck(data.rate);
  let wasOff = false;
  data.port.onmessage = ({ data: block }: MessageEvent<Float32Array>) => {
    const off = isOff(block.length, performance.now());
    if (off !== wasOff) tell({ kind: 'rate', off });
    wasOff = off;
    ears.push(block).forEach(tell);
  };
};

addEventListener('message', ({ data }: MessageEvent<Opening | typeof PLUCKED>) => {
  if (data === PLUCKED) listener?.plucked();
  else open(data);
});
