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
    a: {
      label: 'Allowed difference',
    },
  },
  choices: {},
  results: {
    P_m: 'Lead as measured',
    dP: 'Measured less marked',
  },
  limits: {
    dP: 'Difference from the marked lead',
  },
  cautions: {
    switchOffUnplug:
      'Switch off and unplug; turn the screw by its coupling and keep fingers out of the gap under the nut.',
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
    powerScrewsLead: 'power screws: the lead is the travel in one turn',
    difference: 'difference',
    tenTurnsFour:
      'lead = pitch × starts = 2 mm × 4 = 8 mm; ten turns make 80 mm; Tr 8×8(P2) means lead and pitch (designation as in ISO 2902, whose list lacks this size)',
    singleStartScrew: '10 mm / 5 = 2 mm',
    turnSteelRule: '± 0.5 mm on one turn is wider than the allowed 0.03 mm',
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
    set: (a: { lead: Amount; longer: boolean }, p: Print) => ({
      glance: `≠ Set lead as measured`,
      sentence: `The screw moves ${p(a.lead)} a turn, ${a.longer ? 'more' : 'less'} than marked: set the machine’s lead to what the screw has.`,
    }),
  },
  figure: {
    label: 'Travel of the nut on the screw',
    turns: (count: string, lead: string) => `${count} turns of ${lead}`,
    toScale: 'to scale',
  },
  steps: {
    keep: 'Keep the reading for this machine.',
    moreTurns: 'Twice the turns halve the doubt about one turn.',
    sameSide: 'Always come from the same side, so that play does not count.',
    countStarts: 'Count the thread starts at the end of the screw: lead = pitch × starts.',
    nearestLead:
      'Take the nearest lead that such a screw is made with (2, 4, 8 mm…; an inch screw: 25.4 mm over its turns per inch), not the measured digits, and set steps and lead of this machine to it.',
    otherCauses:
      'If no such lead is near, look for a nut that skips, or a coupling that slips, before blaming the screw.',
  },
};
export default en;
