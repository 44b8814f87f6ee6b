/** The trade's words, each with one plain line. `said` is how it stands in a text: whole words, small letters, longest first. */
interface TermWords {
  readonly name: string;
  readonly said: readonly string[];
  readonly line: string;
}

const terms = {
  lead: {
    name: 'Lead',
    said: ['leads', 'lead'],
    line: 'How far the nut travels in one turn of the screw: pitch × starts.',
  },
  pitch: {
    name: 'Pitch',
    said: ['pitches', 'pitch'],
    line: 'From one groove, or one tooth, to the next. On a screw of several starts it is not the lead.',
  },
  starts: {
    name: 'Starts',
    said: ['starts', 'start'],
    line: 'Threads that run side by side round one screw. Count the thread ends on its face.',
  },
  tir: {
    name: 'TIR',
    said: ['tir', 'needle swing'],
    line: 'Total indicator reading: highest less lowest in one turn. Twice the distance off centre.',
  },
  runOut: {
    name: 'Run-out',
    said: ['run-out', 'runs out of true', 'runs out'],
    line: 'How far a turning part swings to the side, off its axis.',
  },
  bValue: {
    name: 'B value',
    said: ['b value'],
    line: 'How steeply an NTC sensor’s resistance falls as it gets hotter. In kelvin, on its data sheet.',
  },
  ntc: { name: 'NTC', said: ['ntc'], line: 'A temperature sensor whose resistance falls as it gets hotter.' },
  detentTorque: {
    name: 'Detent torque',
    said: ['detent torque'],
    line: 'What holds a motor in its steps without current: the clicks that you feel by hand.',
  },
  holdingTorque: {
    name: 'Holding torque',
    said: ['holding torque'],
    line: 'The most that a motor with its current on holds against turning.',
  },
  fullStep: {
    name: 'Full step',
    said: ['full steps', 'full step'],
    line: 'The turn from one natural place of a motor to the next: often 1.8°.',
  },
  microstep: {
    name: 'Microstep',
    said: ['microsteps', 'microstep'],
    line: 'A part of a full step that the driver makes by sharing the current between two coils.',
  },
  land: { name: 'Land', said: ['land'], line: 'The straight end of the nozzle’s bore, at the tip.' },
  heatBreak: {
    name: 'Heat break',
    said: ['heat break'],
    line: 'The thin tube between the hot block and the cold side. It keeps the heat down.',
  },
  flowIndex: {
    name: 'Flow index',
    said: ['flow index'],
    line: 'How melt thins as it flows faster: 1 not at all, like oil; plastics about 0.4.',
  },
  consistency: { name: 'Consistency', said: ['consistency'], line: 'How stiff the melt is at a slow, set shear.' },
  shearRate: { name: 'Shear rate', said: ['shear rate'], line: 'How fast layers of the melt slide past each other.' },
  retraction: {
    name: 'Retraction',
    said: ['retractions', 'retraction'],
    line: 'Filament drawn back before a move, so that the nozzle does not ooze.',
  },
  wrap: { name: 'Wrap', said: ['wrap'], line: 'The angle of a pulley on which the belt lies: half round is 180°.' },
  span: { name: 'Span', said: ['spans', 'span'], line: 'Free length of belt between the two places that hold it.' },
  run: {
    name: 'Run of a belt',
    said: ['belt run', 'both runs', 'run of a belt', 'run of the belt', 'straight run'],
    line: 'One straight part of a belt loop, between two pulleys.',
  },
  idler: {
    name: 'Idler',
    said: ['idlers', 'idler'],
    line: 'A pulley without a motor, which only turns the belt round.',
  },
  springRate: {
    name: 'Spring rate',
    said: ['spring rate'],
    line: 'Force for one length of stretch. Specific: for stretching to double the length.',
  },
  bendingStiffness: {
    name: 'Bending stiffness',
    said: ['bending stiffness'],
    line: 'How hard it is to bend: the material’s modulus times the section’s second moment.',
  },
  preload: {
    name: 'Preload',
    said: ['preload'],
    line: 'How hard two parts press on each other before any load comes.',
  },
  deadCentre: {
    name: 'Dead centre',
    said: ['dead centre', 'dead centres'],
    line: 'Where a turn of the bush moves the wheel neither in nor out.',
  },
  eccentric: {
    name: 'Eccentric bush',
    said: ['eccentric bushes', 'eccentric bush'],
    line: 'A sleeve with its hole off centre: turned, it moves the wheel to or from the rail.',
  },
  secondMoment: {
    name: 'Second moment of area',
    said: ['second moment of area', 'second moment'],
    line: 'How a section’s shape resists bending: twice as thick, sixteen times as much.',
  },
  slenderness: {
    name: 'Slenderness',
    said: ['slenderness'],
    line: 'Length of a bar over its thickness, as it counts for buckling.',
  },
  whirl: {
    name: 'Whirl',
    said: ['whirling', 'whirl'],
    line: 'A screw that turns as fast as it can swing bows out and whips.',
  },
  criticalSpeed: {
    name: 'Critical speed',
    said: ['critical speed'],
    line: 'The turning at which a screw begins to whirl.',
  },
  buckling: {
    name: 'Buckling',
    said: ['buckling', 'buckles', 'buckle'],
    line: 'A long bar that is pushed bows out sideways, all at once.',
  },
  coreDiameter: {
    name: 'Core diameter',
    said: ['core diameter', 'core'],
    line: 'Thickness of a screw at the bottom of its thread.',
  },
  modulus: {
    name: 'Modulus',
    said: ['young’s modulus', 'elastic modulus', 'bulk modulus', 'modulus'],
    line: 'Stiffness of a material: stress for the stretch it makes. Bulk: pressure for the squeeze.',
  },
  backlash: {
    name: 'Backlash',
    said: ['backlash', 'lost motion'],
    line: 'How far a drive turns before what it drives follows, after a change of direction.',
  },
  tram: {
    name: 'Tram',
    said: ['tramming', 'trammed', 'tram'],
    line: 'To set the bed parallel to the plane in which the nozzle travels.',
  },
  gantry: { name: 'Gantry', said: ['gantry'], line: 'The beam that carries the print carriage across the bed.' },
  feeder: { name: 'Feeder', said: ['feeder', 'feed gear'], line: 'Motor and gear that push the filament.' },
  limitSwitch: {
    name: 'Limit switch',
    said: ['limit switch'],
    line: 'The switch at the end of an axis, by which the machine finds its zero.',
  },
  cutOff: {
    name: 'Thermal cut-off',
    said: ['thermal cut-off', 'cut-off'],
    line: 'A part that breaks the heater’s supply by itself when it gets too hot. No program needed.',
  },
  heaterGuard: {
    name: 'Heater guard',
    said: ['heater guard', 'guard'],
    line: 'The machine’s program that cuts a heater whose reading makes no sense. Software, no protective device.',
  },
  timeConstant: {
    name: 'Time constant',
    said: ['time constant'],
    line: 'Time in which about two thirds of a change are done.',
  },
  emissivity: {
    name: 'Emissivity',
    said: ['emissivity'],
    line: 'How well a surface sheds heat as rays: bright metal little, black paint nearly all.',
  },
  dewPoint: { name: 'Dew point', said: ['dew point'], line: 'Water settles on anything colder than this.' },
  glassTransition: {
    name: 'Glass transition',
    said: ['glass transition'],
    line: 'The temperature at which a plastic goes from stiff to soft.',
  },
  proofLoad: { name: 'Proof load', said: ['proof load'], line: 'What a screw bears without staying longer.' },
  threadInsert: {
    name: 'Wire thread insert',
    said: ['wire thread inserts', 'wire thread insert'],
    line: 'A coil of wire that makes a new thread of the old size in a larger hole.',
  },
  vBlock: {
    name: 'V-block',
    said: ['v-blocks', 'v-block'],
    line: 'A block with a notch in which a round bar lies and can be turned.',
  },
  damping: {
    name: 'Critical damping',
    said: ['critical damping', 'logarithmic decrement'],
    line: 'So much damping that nothing swings back. Machines have a few per cent of it.',
  },
} as const satisfies Readonly<Record<string, TermWords>>;

const en = {
  terms,
  title: 'Words of the trade',
  drawings: {
    lead: 'A screw of two starts: the lead is twice the pitch',
    tir: 'A screw off its axis under an indicator: it swings by twice its offset',
    wrap: 'A belt round a pulley: the wrap is the angle on which it lies',
    land: 'Section of a nozzle: cone, and the land at its tip',
    heatBreak: 'Section of a hot end: cold side, heat break, hot block',
    deadCentre: 'An eccentric bush with its thick side towards the rail: a small turn moves the wheel hardly at all',
    labels: {
      lead: 'lead',
      pitch: 'pitch',
      swing: 'TIR',
      wrap: 'wrap',
      land: 'land',
      cold: 'cold',
      hot: 'hot',
      rail: 'rail',
    },
  },
};
export default en;
