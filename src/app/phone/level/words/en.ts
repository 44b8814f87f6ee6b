/** Words of the room where the phone is a level. */
const en = {
  /** Why there is no level, and what to do; typing by hand is named by the panel itself. */
  problem: {
    insecure: 'The motion sensor is only given to a page that came over a secure connection (https). Open it that way.',
    unknown: 'This browser has no way to the motion sensor. Another browser on this phone may have.',
    barred: 'The page or the server that shows this one keeps the motion sensor back. Open Trammel by itself.',
    refused:
      'The motion sensor was refused. Allow motion sensors for this site in the browser’s settings, load the page anew, and start again.',
    silent:
      'No numbers come from a motion sensor. A desk computer has none; on a phone, look whether the browser’s settings allow motion sensors for this site.',
    stopped: 'The motion sensor stopped. Start again; what was read before is kept.',
    'never still':
      'The phone did not come to rest. Switch off what shakes the machine (fans, steppers, another printer), keep hands off the table, and read again.',
    'not lying': 'The phone does not lie on its back. Lay it flat, screen up, and read again.',
  },

  start: {
    how: 'Lay the phone on its back along what is to be level, read, turn it half a turn, read again: the sensor’s own error drops out. Take off a case that is not flat; let a camera bump hang over the edge. On something narrow, lay a straight bar such as a steel rule across it first.',
    caution:
      'Motors off, nozzle and bed cold, before you lay a phone on a machine: a homing move throws it down and can crush a finger.',
    key: 'Start the level',
    waiting: 'Waiting for the sensor…',
    byHand: 'A slope can always be typed by hand instead: from two heights, or a level with a scale.',
  },
  reading: {
    first: 'First reading',
    firstOfPair: (pair: number) => `First reading of pair ${pair}`,
    second: 'Second reading',
    lay: 'Stand in front. Lay the phone along the bar, screen up, its earpiece to the right. Press the key and take your hand away.',
    turn: 'Turn the phone half a turn, flat on what it lies on, to the same place: its earpiece now points left. Press the key and take your hand away.',
    turnBack:
      'Turn the phone half a turn, flat on what it lies on, to the same place: its earpiece now points right. Press the key and take your hand away.',
    /** The pairs go forth and back, so that a sensor that warms does not count. */
    againLeft:
      'Lift the phone and lay it down again the same way round, in the same place: its earpiece still points left. Read so, forth and back, a sensor that warms evenly does not count.',
    againRight:
      'Lift the phone and lay it down again the same way round, in the same place: its earpiece still points right.',
    key: 'Read',
    moving: 'Moving: wait for it to lie still…',
    settling: 'Coming to rest…',
    reading: 'Still. Reading, hands off…',
    done: 'Part of the reading done',
    stop: 'Stop',
    doubt: (degrees: number, wanted: boolean) =>
      wanted
        ? `By its own heading the phone was turned by ${degrees}°, not by half a turn. A reading without the turn would call anything level.`
        : `By its own heading the phone was turned by ${degrees}°. For this reading it lies the same way round as before.`,
    again: 'Read again',
    keep: 'It lies as it should: count the reading',
    strike: 'Strike the last reading',
    startOver: 'Start over',
  },
  laying: {
    drawing: 'From above: The phone, earpiece to the right',
    drawingTurned: 'From above: The phone turned, earpiece to the left',
    earpiece: 'earpiece →',
    earpieceTurned: '← earpiece',
    left: 'left',
    right: 'right',
    you: 'you stand here',
  },

  result: {
    /** Which end is high, or that it cannot be told, from so many pairs. */
    neither: (pairs: number) =>
      pairs === 1
        ? 'From one pair: neither end is high beyond the ±, level as far as this tells.'
        : `From ${pairs} pairs: neither end is high beyond the ±, level as far as this tells.`,
    rightHigh: (pairs: number) =>
      pairs === 1 ? 'From one pair: the right end is high.' : `From ${pairs} pairs: the right end is high.`,
    leftHigh: (pairs: number) =>
      pairs === 1 ? 'From one pair: the left end is high.' : `From ${pairs} pairs: the left end is high.`,
    interval: (angle: string) => `${angle}, 95 %`,
    drawing: 'The bar from the front',
    high: 'high',
    times: (factor: number) => `left · from the front, slope drawn ${factor} times too large · right`,
    /** What the two axes say of the laying. */
    onePair: 'One pair cannot show whether the phone rocked: take a second one.',
    disagree:
      'The pairs do not agree on the sensor’s own error: the phone rocked, or what it lies on is not flat there. Clean both, mark the place with a pen, and read again.',
    agree: 'The pairs agree, along and across.',
    leans: (slope: string) =>
      `Across the bar it leans by ${slope}: the phone hangs over or rocks sideways, or the bar does. Lean makes the direction of the phone count; level it across if you can.`,
    stepsRule:
      'Most of the ± is the steps in which this browser passes the sensor’s numbers on: more pairs do not help much. A machinist’s level, two heights, or a browser with finer numbers do.',
    plus: 'Plus means that the right end is higher.',
    morePairs: (pairs: number) =>
      `More pairs make the ± smaller; from ${pairs} on, their own spread says how well they repeat.`,
  },
  budget: {
    title: 'What the ± is made of',
    spread: 'the spread of the pairs',
    noise: 'noise, and laying the phone down',
    steps: 'steps in which this browser passes the numbers on',
    direction: 'direction of the phone, with the lean across',
    scale: 'scale of the sensor',
    drift: 'drift of a sensor that warms, which a second pair takes out',
    half: (half: string) => `± ${half}`,
    squares: 'Added in squares.',
    zero: (along: string, across: string) =>
      `The sensor’s own error, cancelled here: ${along} along, ${across} across.`,
  },
  assumed: {
    title: 'What is assumed',
    laying: 'One laying differs from the next by up to ±, mm/m',
    direction: 'Long edge off the bar’s direction by up to ±, °',
    negative: 'A limit is not negative.',
    untilThen: (problem: string, usual: string) => `${problem} Until then ${usual} is taken.`,
    basis:
      '95 % limits; common practice, no source. Besides: the sensor’s axis within 2° of the phone’s edge, its scale within 3 %, its drift from reading to reading within 0.5 mm/m. Reversal: Evans, Hocken & Estler, CIRP Annals 1996 (from memory).',
  },
};
export default en;
