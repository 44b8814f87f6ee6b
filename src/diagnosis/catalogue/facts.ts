interface Asked<Id extends string> {
  readonly id: Id;
  readonly lasting: boolean;
}

const lasting = <const Id extends string>(id: Id): Asked<Id> => ({ id, lasting: true });
const lately = <const Id extends string>(id: Id): Asked<Id> => ({ id, lasting: false });

export const facts = [
  lasting('two-z-screws'),
  lasting('crossed-belts'),
  lasting('belt-z'),
  lasting('grooved-wheels'),
  lasting('tube-feed'),
  lasting('printed-holes'),
  lasting('mains-inside'),
  lately('just-moved'),
  lately('new-build'),
  lately('worked-on'),
  lately('crashed'),
  lately('many-hours'),
  lately('stood-long'),
  lately('faster'),
  lately('layer-changed'),
  lately('hotter'),
  lately('new-filament'),
  lately('open-filament'),
  lately('nozzle-changed'),
  lately('hot-end-changed'),
  lately('belts-new'),
  lately('bed-touched'),
  lately('bed-moved'),
  lately('tall-part'),
  lately('cold-room'),
  lately('damp-room'),
  lately('open-window'),
  lately('warm-place'),
  lately('overtightened'),
  lately('shock-felt'),
];
