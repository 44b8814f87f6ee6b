import { BLOCK, createGatherer, PROCESSOR } from './microphone-blocks';

// The audio thread's own names; TypeScript's libraries do not have them.
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;

/** Hands the microphone's samples to the worker whose port it is sent, past the page. */
class BlocksToWorker extends AudioWorkletProcessor {
  private gather: ((run: Float32Array) => void) | undefined;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => {
      this.gather = createGatherer(BLOCK, (block) => data.postMessage(block, [block.buffer]));
    };
  }

  process(inputs: readonly (readonly Float32Array[])[]): boolean {
    const run = inputs[0]?.[0];
    if (run) this.gather?.(run);
    return true;
  }
}

registerProcessor(PROCESSOR, BlocksToWorker);
