/** Headings of the list of checks, in its order. */
const en = {
  part: 'On the print',
  z: 'Z drive',
  motion: 'Belts, wheels, motion',
  bed: 'Bed and frame',
  melt: 'Nozzle and heat',
  repair: 'Screws and threads',
  air: 'Room and filament',
};
export default en;
