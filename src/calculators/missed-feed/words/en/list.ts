import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Missed feed',
  question: 'Feed failed and nobody saw it: how much is missing, and is the part worth saving?',
  sayings: [
    'filament ran out and it printed on in the air',
    'jam noticed late',
    'nozzle blocked in the middle of a print',
    'a band of thin layers',
    'starved layers',
    'nothing comes out any more',
    'filament snapped or tangled overnight',
    'gear ground the filament',
    'how many layers are missing',
    'save the print or start again',
    'is it worth repairing',
    'gap between part and nozzle',
  ],
};
export default en;
