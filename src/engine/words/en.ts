/** Words of the engine: what every check says. */
const lower = (label: string): string =>
  /^(?:Young|Poisson)|^.[A-Z]/.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);

const en = {
  /** Shared choices of a machine: label and options. */
  choices: {
    'z.drive': { label: 'Screws joined by', options: { belt: 'a closed belt', motors: 'two motors' } },
    'z.lift': { label: 'Z is driven by', options: { screw: 'a screw', belt: 'a belt and pinion' } },
    'z.screw-material': { label: 'Material of the screw', options: { steel: 'steel', stainless: 'stainless steel' } },
    'z.screw-ends': {
      label: 'Ends of the screw in the machine',
      options: {
        pinned: 'a bearing at each end, neither holds its direction',
        mixed: 'one end clamped true, a single bearing at the other',
        clamped: 'both ends clamped true',
        free: 'held by the coupling only, top free',
      },
    },
    'belt.type': { label: 'Sort of belt', options: {} },
  },
  /** The ten parts of a machine. */
  parts: {
    room: 'Room',
    belts: 'Belts',
    nozzle: 'Nozzle and heat',
    guides: 'Guides',
    z: 'Z drive',
    feed: 'Feed',
    frame: 'Frame',
    print: 'Usual print',
    electrics: 'Electrics',
    bed: 'Bed',
  },
  /** A label as it stands inside a sentence: small first letter, but for names and abbreviations. */
  inSentence: lower,
  enter: (label: string) => `Enter: ${label}.`,
  tooWide: (low: string, high: string) =>
    `The half-width after ± is wider than all that this check can use: ${low} to ${high}.`,
  below: (value: string, low: string, high: string) =>
    `${value} is below what this check can use. Accepted: ${low} to ${high}.`,
  above: (value: string, low: string, high: string) =>
    `${value} is above what this check can use. Accepted: ${low} to ${high}.`,
  doesNotRead: (tool: string, others: readonly string[]) =>
    `A ${tool} does not read this. ${others.length > 0 ? `Take a ${others.join(' or a ')}` : 'Pick how it was read'}, or type its ± behind the value.`,
  beyondReach: (tool: string, least: string, most: string, others: readonly string[]) =>
    `A ${tool} reads from ${least} to ${most}. ${others.length > 0 ? `Take a ${others.join(' or a ')}` : 'Pick how it was read'}, or type its ± behind the value.`,
  keptDoesNotFit: (reason: string) => `The machine’s value does not fit: ${reason}`,
  stillNeeded: (names: readonly string[]) => `Still needed: ${names.map(lower).join(', ')}.`,
  cannotWorkOut: (problem: string, names: readonly string[], more: number) =>
    `Cannot be worked out: ${problem}. Look at: ${names.map(lower).join('; ')}${more > 0 ? `; and ${more} more` : ''}.`,
  undetermined: (name: string, from: string, to: string) =>
    `The ${lower(name)} cannot be told from this reading: anything between ${from} and ${to}.`,
  /** What was not measured, behind a glance: the first by name. */
  glanceAssuming: (glance: string, names: readonly string[]) =>
    names.length === 0 ? glance : `${glance} · ${names[0]} assumed${names.length > 1 ? ` +${names.length - 1}` : ''}`,
  assuming: (sentence: string, assumed: readonly string[]) => {
    if (assumed.length === 0) return sentence;
    const more = assumed.length > 4 ? ` and ${assumed.length - 3} more` : '';
    return `${sentence} Assumed, not measured: ${assumed.slice(0, more === '' ? 4 : 3).join(', ')}${more}.`;
  },
  /** While entries cannot be used there is no order: the first with its reason, the others by name. */
  unreadable: (name: string, reason: string, others: readonly string[]) =>
    `No order while an entry cannot be used. ${name}: ${reason}${others.length > 0 ? ` Also: ${others.map(lower).join('; ')}.` : ''}`,
  nothingMeasured: (names: readonly string[]) =>
    `No verdict yet: nothing has been measured. Measure and enter: ${names.map(lower).join(', ')}.`,
  leastAboveMost: (least: string, low: string, most: string, high: string) =>
    `${least} is ${low}, which is more than ${lower(most)}, ${high}. Which of the two is right?`,
  signs: {
    'right-higher': 'right side higher',
    'left-higher': 'left side higher',
    'back-higher': 'back higher',
    'front-higher': 'front higher',
    'gap-at-back': 'gap opens at the back',
    'gap-at-front': 'gap opens at the front',
    'mass-by-drive': 'mass on the drive’s side of the guide',
    'mass-away-from-drive': 'mass on the other side of the guide',
    'mass-left': 'mass left of the guide',
    'mass-right': 'mass right of the guide',
    'second-further-out': 'second belt’s tensioner further out',
    'first-further-out': 'first belt’s tensioner further out',
    'jaws-inside-crests': 'jaws between the two crests',
    'jaws-outside-crests': 'jaws beyond the two crests',
    'high-points-alike': 'high points face the same way',
    'high-points-opposite': 'high points face opposite ways',
    'wider-than-square': 'wider than 90°',
    'sharper-than-square': 'narrower than 90°',
  },
  pickSide: (plus: string, minus: string) => `Pick the picture that shows it: ${plus}, or ${minus}.`,
  notKnown: (name: string) => `${name} is not known.`,
  link: {
    putRight: (name: string, reason: string) => `Put this right first, then there is a link. ${name}: ${reason}`,
    typicalKept: (name: string) =>
      `${name}: the machine keeps it as a typical value, and a link cannot say that. Measure it or enter it here.`,
    tooLong: 'This link is too long to be one of Trammel’s. Nothing was taken over.',
    noForm: 'This link does not say which form its numbers have. Nothing was taken over. Ask for a new link.',
    newer: (form: number, known: number) =>
      `This link was made by a newer Trammel (form ${form}; this one reads up to ${known}). Nothing was taken over. Bring this Trammel up to date, then open the link again.`,
    tooMany: 'This link holds more values than any check has. Nothing was taken over.',
    quoted: (text: string, cut: boolean) => `“${text}${cut ? '…' : ''}”`,
    twice: (name: string) => `${name} stands in the link twice: the first was taken.`,
    noOption: (name: string, quoted: string) =>
      `Left out: ${name}. The link says ${quoted}, which is not an option here.`,
    noValue: (quoted: string) => `Left out: ${quoted}. This check has no such value.`,
    left: {
      garbled: (name: string, quoted: string) => `Left out: ${name}. What the link says, ${quoted}, is garbled.`,
      tooLong: (name: string, quoted: string) => `Left out: ${name}. What the link says, ${quoted}, is too long.`,
      noUnit: (name: string, quoted: string) => `Left out: ${name}. What the link says, ${quoted}, has no unit.`,
      unit: (name: string, quoted: string, unit: string) =>
        `Left out: ${name}. What the link says, ${quoted}, has the unit ${unit}, which this check does not know.`,
      tool: (name: string, quoted: string, tool: string) =>
        `Left out: ${name}. What the link says, ${quoted}, was read with ${tool}, which this check does not know.`,
      number: (name: string, quoted: string) =>
        `Left out: ${name}. What the link says, ${quoted}, cannot be read as a number with a unit.`,
    },
  },
  places: {
    'bed.width': 'Bed width',
    'bed.depth': 'Bed depth',
    'print.first-layer': 'First layer',
    'belt.span': 'Free span of the first belt',
    'belt.second-span': 'Free span of the second belt',
    'belt.width': 'Belt width',
    'belt.mass-per-length': 'Mass per metre of the belt',
    'belt.bending-stiffness': 'Bending stiffness E·I of the belt',
    'belt.pitch': 'Belt pitch',
    'belt.tensioner-wrap': 'Wrap of the belt on the pulley that is moved',
    'carriage.mass': 'Moving mass',
    'carriage.acceleration': 'Acceleration',
    'belt.length': 'Length of the first belt, clamp to clamp',
    'z.screw-distance': 'Distance between the screws',
    'z.lead': 'Screw lead',
    'z.step-angle': 'Full step of the Z motor',
    'belt.step-angle': 'Full step of the belt’s motor',
    'feed.step-angle': 'Full step of the feed motor',
    'room.air-temperature': 'Air temperature in the room',
    'room.relative-humidity': 'Relative humidity in the room',
    'filament.diameter': 'Filament diameter',
    'heater.resistance': 'Heater’s resistance',
    'heater.voltage': 'Supply voltage',
    'heater.temperature': 'Working temperature',
    'z.screw-length': 'Screw length',
    'z.core-diameter': 'Core diameter of the screw',
    'print.line-width': 'Line width',
    'print.layer': 'Layer height',
    'print.speed': 'Print speed',
    'feed.melt-volume': 'Volume of melt',
    'z.belt-pitch': 'Pitch of the Z belt',
    'z.pinion-teeth': 'Teeth of the Z pinion',
    'belt.pulley-teeth': 'Teeth of the motor pulley',
    'wheel.radius': 'Wheel radius where the flank touches',
    'feed.gear-diameter': 'Feed gear: diameter where it grips',
    'z.gear-ratio': 'Gear ratio, motor turns per turn of the drive',
    'belt.gear-ratio': 'Gear ratio, motor turns per turn of the pulley',
    'z.holding-torque': 'Holding torque of the motor',
    'z.microsteps': 'Microsteps per full step',
  },
};
export default en;
