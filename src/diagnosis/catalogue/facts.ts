import type { Fact } from '../types';

const lasting = (id: string, question: string): Fact => ({ id, question, lasting: true });
const lately = (id: string, question: string): Fact => ({ id, question, lasting: false });

export const facts: readonly Fact[] = [
  lasting('two-z-screws', 'Does the machine have two Z screws or more?'),
  lasting('crossed-belts', 'Do two long belts drive the carriage together?'),
  lasting('belt-z', 'Is Z driven by a belt instead of a screw?'),
  lasting('grooved-wheels', 'Do carriage and gantry run on grooved wheels?'),
  lasting('tube-feed', 'Is the feeder apart from the hot end, with a tube between?'),
  lasting('printed-holes', 'Is the hole in plastic?'),
  lately('just-moved', 'Was the machine carried or shipped since it last worked well?'),
  lately('new-build', 'Was it put together in the last few weeks?'),
  lately('worked-on', 'Was it taken apart or repaired lately?'),
  lately('crashed', 'Did the nozzle run into the bed, a part or an end stop?'),
  lately('many-hours', 'Has it run more than about 1000 hours?'),
  lately('stood-long', 'Did it stand unused for months?'),
  lately('faster', 'Were speed or acceleration raised lately?'),
  lately('layer-changed', 'Did it begin with another layer height?'),
  lately('hotter', 'Was the temperature raised, or a material printed that needs it hotter?'),
  lately('new-filament', 'Did it begin with a new spool?'),
  lately('open-filament', 'Did the spool lie open for more than a week?'),
  lately('nozzle-changed', 'Was the nozzle changed?'),
  lately('hot-end-changed', 'Was anything on the hot end changed: heater, sensor, fan?'),
  lately('belts-new', 'Were belts changed or loosened?'),
  lately('bed-touched', 'Has the bed been touched, or not been washed for some time?'),
  lately('bed-moved', 'Was the bed plate taken off, or its screws turned?'),
  lately('tall-part', 'Is the part much taller than it is wide?'),
  lately('cold-room', 'Is the room cooler than about 18 °C?'),
  lately('damp-room', 'Is the room damp: a cellar, a laundry, washing hung to dry?'),
  lately('open-window', 'Is there a window, a door or a fan nearby?'),
  lately('warm-cupboard', 'Does the machine or its electronics stand in a closed, warm place?'),
  lately('overtightened', 'Was the screw tightened hard, or often in and out?'),
];
