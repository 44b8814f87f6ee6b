/** Words of the check “Screw lead”. */
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
  choices: {

  },
  results: {
    P_m: 'Lead as measured',
    dP: 'Measured less marked',
  },
  limits: {
    dP: 'Difference from the marked lead',
  },
  cautions: {
    switchOffUnplug: 'Switch off and unplug; turn the screw by its coupling and keep fingers out of the gap under the nut.',
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
    tenTurnsFour: 'lead = pitch × starts = 2 mm × 4 = 8 mm; ten turns make 80 mm; Tr 8×8(P2) means lead and pitch (designation as in ISO 2902, whose list lacks this size)',
    singleStartScrew: '10 mm / 5 = 2 mm',
    turnSteelRule: '± 0.5 mm on one turn is wider than the allowed 0.03 mm',
  },
  orders: {

  },
  steps: {

  },
};
export default en;
