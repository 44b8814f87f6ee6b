/** Words of the check “Screw lead”. */
import type { Amount, Print } from '../../../engine/order';

const en = {
  inputs: {
    x: {
      label: 'Travel of the nut',
      hint: 'From a mark before turning to the mark after it, always turning the same way, so that play does not count.',
    },
    N: {
      label: 'Whole turns',
      hint: 'A dot on the screw against a line on the frame; more turns, less doubt.',
    },
    P_h: {
      hint: 'As marked, or as set in the machine.',
    },
    P: {
      label: 'Pitch, if the screw is marked with one',
      hint: 'Tr 8×8(P2): diameter 8 mm, lead 8 mm, pitch 2 mm. Tr 8×2: lead 2 mm, one start.',
    },
    n_s: {
      label: 'Starts of its thread',
      hint: 'Count the thread ends on the face of the screw.',
    },
    k_a: {
      label: 'Share of the travel it may be off by',
      hint: 'A rolled screw holds its lead to about a thousandth; the leads that screws are made with lie 0.8 % apart or more.',
    },
  },
  choices: {},
  results: {
    P_m: 'Lead as measured',
    dP: 'Measured less marked',
    a: 'Allowed difference',
    P_d: 'Lead by the marking',
  },
  limits: {
    dP: 'Difference from the marked lead',
  },
  cautions: {
    switchOffUnplug:
      'Switch off and unplug. Turn the screw by its coupling. The nut can crush a finger: keep out of the gap under it.',
  },
  proof: 'Command a known travel, the longest the machine has, and measure it: it should agree within the tool.',
  beware: {
    leadRightAverage: 'A lead that is right on average may still be uneven along the screw; measure at both ends.',
  },
  examples: {
    tenTurnsFour: 'Ten turns of a four-start screw of 2 mm pitch',
    singleStartScrew: 'A single-start screw where four starts were expected',
    turnSteelRule: 'One turn by steel rule cannot tell',
  },
  sources: {
    powerScrewsLead: 'vocabulary of screw threads: the lead is the travel in one turn',
    difference: 'difference',
    designation: 'designation of multiple-start trapezoidal threads: lead, and the pitch in brackets',
    tenTurnsFour:
      'lead = pitch × starts = 2 mm × 4 = 8 mm; ten turns make 80 mm; Tr 8×8(P2) means lead and pitch (designation as in ISO 2902, whose list lacks this size)',
    singleStartScrew: '10 mm / 5 = 2 mm',
    turnSteelRule: '± 0.5 mm on one turn is wider than the allowed 0.04 mm',
  },
  contradictions: {
    twoLeads: (a: { marked: Amount; set: Amount }, p: Print) =>
      `Pitch and starts make a lead of ${p(a.marked)}, and the lead given is ${p(a.set)}. Which of the two is right?`,
  },
  orders: {
    leave: (a: { lead: Amount }, p: Print) => ({
      glance: '✓ Leave the screw',
      sentence: `Leave it: the lead is ${p(a.lead)}, as marked.`,
    }),
    again: {
      glance: '⟳ Turn further, measure again',
      sentence: 'Turn further and measure again.',
    },
    setMade: (a: { lead: Amount; measured: Amount; longer: boolean }, p: Print) => ({
      glance: `≠ Set lead ${p(a.lead)}`,
      sentence: `Set the machine’s lead to ${p(a.lead)}: the screw moves ${p(a.measured)} a turn, ${a.longer ? 'more' : 'less'} than is set, and that is the nearest lead such a screw is made with.`,
    }),
    tellApart: (a: { near: Amount; other: Amount | undefined }, p: Print) => ({
      glance: '⟳ Turn further, measure again',
      sentence: `Set nothing yet: turn further and measure again. ${a.other ? `It may be ${p(a.near)} or ${p(a.other)}` : `It is likely ${p(a.near)}`}, and this reading does not settle it.`,
    }),
    noneMade: (a: { measured: Amount }, p: Print) => ({
      glance: '⟳ Count turns, measure again',
      sentence: `Set nothing: no screw is known to be made with a lead of ${p(a.measured)}. Count the turns and measure again.`,
    }),
  },
  figure: {
    label: 'Travel of the nut on the screw',
    turns: (count: string, lead: string) => `${count} turns of ${lead}`,
    toScale: 'to scale',
  },
  steps: {
    keep: 'Save the reading for this machine.',
    moreTurns: 'Twice the turns halve the doubt about one turn.',
    sameSide: 'Always come from the same side, so that play does not count.',
    countStarts: 'Count the thread starts at the end of the screw: lead = pitch × starts.',
    stepsToo:
      'Set it where the machine counts with it, in its lead or its steps a millimetre; never the measured digits.',
    countTurns:
      'Turn by a dot against a line, whole turns only, and read the travel over as many as there is room for.',
    slips: 'If it stays so: look for a nut that skips, or a coupling that slips, before blaming the screw.',
  },
};
export default en;
