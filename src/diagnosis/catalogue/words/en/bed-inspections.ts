import type { bedInspections as inspections } from '../../bed-inspections';
import type { InspectionsWords } from '../../wording';
import { LIMIT, UNSURE } from './answers';

export const bedInspections: InspectionsWords<typeof inspections> = {
  'bed-heights': {
    title: 'Measure the bed’s heights',
    how: [
      'Heat the bed as for printing and let it soak, ten minutes or more: cold it has another shape.',
      'Wipe the nozzle clean with brass, then hold it below the heat at which it oozes: a drop is read as height.',
      'Take the height at five points or more.',
      'The check splits it into tilt and what no screw can fix.',
    ],
    cautions: [
      'Bed and nozzle burn: touch the tool only, gloves for wiping.',
      'Keep your fingers out from under the nozzle while it moves.',
    ],
    answers: {
      within: 'Flat and parallel',
      tilt: 'Tilted: the screws can put it right',
      bowed: 'What no screw can fix is beyond the limit',
      close: 'Too close to call',
    },
  },
  adjusters: {
    title: 'Turn each bed adjuster a little and back',
    how: ['Turn each by an eighth and back to its mark.', 'Press the bed’s corners: none may wobble.'],
    cautions: ['Bed cold.'],
    answers: { yes: 'One turns with no resistance', no: 'All are stiff', unsure: UNSURE },
  },
  'under-plate': {
    title: 'Lift the plate and look beneath',
    how: ['Take the plate off and feel along both faces with a finger.'],
    cautions: ['Bed cold.'],
    answers: { yes: 'Something lies there', no: 'Clean', unsure: UNSURE },
  },
  'bed-rule': {
    title: 'Lay a rule across the bed',
    how: ['Lay a steel rule on edge across, along and on both diagonals, a lamp behind it.'],
    cautions: ['Bed cold, or gloves.'],
    answers: { yes: 'Light shows under it', no: 'It lies close', unsure: UNSURE },
  },
  'extruded-shape': {
    title: 'Look at the first layer’s lines',
    how: ['Look at the underside of the part with a lens.', 'Scratch it: lines that part are too far from the bed.'],
    cautions: [],
    answers: { yes: 'Round, with gaps between', no: 'Flat and touching', unsure: UNSURE },
  },
  'water-film': {
    title: 'Put water on the bed',
    how: [
      'On glass or bare metal only: on a polymer sheet clean water beads too, and this judges nothing. There answer “Cannot tell”.',
      'A few drops on the cold plate where the part stood.',
      'Tilt it and watch.',
    ],
    cautions: ['Plate off the machine, or a drop only: water and heaters do not mix.'],
    answers: { yes: 'It beads, on glass or metal', no: 'It spreads as a film', unsure: UNSURE },
  },
  'bed-surface-temperature': {
    title: 'Measure the bed’s surface temperature',
    how: ['Tape the probe to the plate where the part stands.', 'Wait ten minutes at the set temperature.'],
    cautions: ['The bed burns.'],
    answers: { yes: 'More than 5 °C too cold', no: 'As set', unsure: UNSURE },
  },
  'paper-strip': {
    title: 'Hang a paper strip by the bed',
    how: ['Hang a strip of tissue from the gantry, fans off, for two minutes.'],
    cautions: ['Clear of anything hot.'],
    answers: { yes: 'It stirs', no: 'It hangs still', unsure: UNSURE },
  },
  'foot-size': {
    title: 'Look at what came loose',
    how: ['Compare the foot’s width with the part’s height.', 'A foot narrower than a fifth of the height is small.'],
    cautions: [],
    answers: { yes: 'Tall on a small foot', no: 'Broad and low', unsure: UNSURE },
  },
  'surface-look': {
    title: 'Look at the bed’s surface against the light',
    how: ['Tilt the plate under a lamp.', 'Compare where parts stand with an unused corner.'],
    cautions: [],
    answers: { yes: 'Bare, scratched or glazed', no: 'Even', unsure: UNSURE },
  },
  'room-air': {
    title: 'Measure the room’s air and the day’s swing',
    how: [
      'Read temperature and humidity in the morning and in the evening.',
      'The check gives the gap the swing opens.',
    ],
    cautions: [],
    answers: LIMIT,
  },
};
