import { createListener, type ListenerEvent } from '../signal/listener';
import { createRateCheck, type Opening } from './microphone-blocks';

/** From the worker to the page. */
export type Heard = ListenerEvent | { readonly kind: 'rate'; readonly off: boolean };

const tell = (heard: Heard): void => postMessage(heard);

addEventListener('message', ({ data }: MessageEvent<Opening>) => {
  const listener = createListener(data.rate);
  const isOff = createRateCheck(data.rate);
  let wasOff = false;
  data.port.onmessage = ({ data: block }: MessageEvent<Float32Array>) => {
    const off = isOff(block.length, performance.now());
    if (off !== wasOff) tell({ kind: 'rate', off });
    wasOff = off;
    listener.push(block).forEach(tell);
  };
});
