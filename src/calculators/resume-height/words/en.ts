/** Words of the check “Resume height”. */
import type { Amount, Print } from '../../../engine/order';

const en = {
  inputs: {
    Z_r: {
      label: 'Nozzle height Z at which the feeler just drags',
      hint: 'Nozzle clean and warm, not oozing. Lower it over a sound, flat place of the top until the feeler just drags.',
    },
    g_f: {
      label: 'Thickness of the feeler',
      hint: 'Of steel. Paper gives: take ± 0.03 mm.',
    },
    H: {
      label: 'Height of the part',
      hint: 'From bed or foot to the last sound layer. Thin, stringy layers cut off first. Keep clear of the foot’s squeezed-out edge and of curled corners; mean of five.',
    },
    H_t: {
      label: 'Height of the whole, as drawn',
    },
    T_m: {
      label: 'Temperature of the part now',
    },
    T_p: {
      label: 'Temperature of the part while it printed',
      hint: 'On the whole: the foot is as warm as the bed, most of a tall part is cooler.',
    },
    dT: {
      label: 'Cooler or warmer now than while it printed, by',
      hint: 'Without the hot nozzle above it the top is a little cooler; a warmer room makes it less.',
    },
    alpha: {
      label: 'Expansion of the plastic',
    },
    s: {
      label: 'First layer off its set thickness by',
      hint: 'Zero set too close squeezes the foot wide, and the part is too low by this. Set too far, it is too high.',
    },
    g: {
      label: 'Thickness of the glue',
      hint: 'Thin glue next to nothing; a paste that fills up to 0.2 mm.',
    },
    q: {
      label: 'Misfit allowed, over the layer height',
      hint: 'A first new layer a quarter too thin or too thick still holds and hardly shows.',
    },
    e_lim: {
      label: 'Error of the whole height allowed',
    },
  },
  choices: {
    plan: {
      label: 'What is planned',
      hint: 'Going on needs a part that has not moved on the bed, not by a hair. One that came off can only be glued. Felt with the nozzle, height and restart are counted from the same zero.',
      options: {
        nozzle: 'go on, on the bed; height felt with the nozzle',
        rod: 'go on, on the bed; height by caliper',
        glue: 'print the rest by itself and glue it on',
      },
    },
    heat: {
      label: 'The part now is',
      hint: 'Cold, it has shrunk by much of a layer for each 100 mm of height.',
      options: {
        cold: 'cold, or cooling',
        warm: 'as warm as it was: bed at its heat for half an hour',
      },
    },
    drift: {
      label: 'Against while it printed, it is now',
      options: { cooler: 'cooler', warmer: 'warmer' },
    },
    zero: {
      label: 'The first layer came out',
      options: { close: 'thinner than set, squeezed wide', far: 'thicker than set, its lines apart' },
    },
    duty: {
      label: 'What the part has to do',
      hint: 'For the last one no seam will do, however well the layers meet.',
      options: { other: 'anything else', safety: 'hold a person, heat, mains or a raised load' },
    },
    plastic: {
      label: 'Plastic',
      options: { pla: 'PLA', petg: 'PETG', abs: 'ABS', pa: 'polyamide', pc: 'polycarbonate' },
    },
  },
  results: {
    Z_c: 'Top of the part now, as the machine counts',
    c: 'Shrunk since it printed, as a share',
    Z_w: 'Top as it stood while printing',
    dZ_w: 'Shrunk since it printed',
    x: 'Layers that this is, not rounded',
    N: 'Last layer that is there',
    N_n: 'Layer to go on with',
    Z_N: 'Height Z of the last layer that is there',
    Z_n: 'Height Z to go on with',
    d: 'Top stands above its layer’s Z by',
    h_n: 'Thickness that the first new layer gets',
    d_lim: 'Misfit allowed',
    Z_a: 'Height Z that would leave a whole layer above the top',
    H_2: 'Height to draw the second part with',
    Z_k: 'Height at which to cut the drawing',
    x_2: 'Layers of the second part, not rounded',
  },
  limits: {},
  cautions: {
    nozzleHotHold:
      'The nozzle burns: hold the feeler with pliers, and let nothing drip on the hand. No finger between nozzle and part: Z can crush it.',
    moveZSmallest:
      'The Z drive can crush a finger. Move it by the smallest steps near the part: a nozzle that meets it breaks it loose.',
    neverLetZ: 'Never let Z look for its zero above the part: it runs into it.',
    cuttingSandingBlade: 'A blade cuts the hand: clamp the part, cut away from you. Mask against dust.',
    gluesSolventsGloves:
      'Glue sticks skin within seconds, solvents burn: gloves, goggles, fresh air, no flame, and what the label says.',
    partHoldsPerson: 'A part that holds a person, heat, mains or a raised load is never saved with a seam.',
  },
  proof:
    'Before the first new layer, stop the nozzle over the top at the Z given, cold or not oozing: a feeler as thick as the new layer must just drag. Glued: measure the whole; it must be as drawn within the error allowed.',
  beware: {
    partMeasuredCold:
      'A part measured cold is lower than it was: PLA by about 0.12 mm, ABS by 0.4 mm for each 100 mm of height. That is most of a layer, or two.',
    assumesAllLayers:
      'It assumes that all layers but the first are alike. Where they change with height, add them up by hand.',
    footBulges:
      'The foot bulges: first layers squeezed out stand up at the edge and lift a caliper’s jaw. Trim the edge or measure inside it.',
    plasticAlsoShrinks:
      'Plastic also shrinks as it sets and crystallises, but mostly while layers still follow at the right height; what comes after the stop is not counted.',
    offBedPart: 'Off the bed the part cannot go back: no stop finds the place again to a tenth of a line.',
    restartFindsZ:
      'A restart that finds its Z zero anew finds it to some 0.02 mm at best, elsewhere if the bed was cold: warm everything first.',
  },
  examples: {
    feltNozzleWarm: 'Felt with the nozzle on the warm bed: layer 120 is there',
    plaMmMeasured: 'PLA of 100 mm measured cold: 0.12 mm are missing',
    sameOrdinaryCaliper: 'The same by an ordinary caliper, temperatures guessed: not settled',
    sameFeltNozzle: 'The same, felt with the nozzle on a bed that has been at its heat again: settled',
    halfLayerOff: 'Half a layer off: it fits none',
    secondPartMissing: 'A second part for what is missing of 80 mm',
  },
  sources: {
    feltNozzleWarm: '0.3 + 119 · 0.2 = 24.1; the next at 24.3; 24.21 − 0.1 − 24.1 = 0.01',
    plaMmMeasured: '68 × 10⁻⁶ · 18 · 99.98 = 0.1224; 0.3 + 499 · 0.2 = 100.1',
    sameOrdinaryCaliper: '20 of 68 µm/(m·K) and 8 of 18 K: the shrinkage itself is only known to about half of it',
    sameFeltNozzle: '0.3 + 499 · 0.2 = 100.1; 68 × 10⁻⁶ · 100 · 4 = 0.027 mm is all the doubt that warmth leaves',
    halfLayerOff: '(10.21 − 0.3) / 0.2 + 1 = 50.55: nearly midway, and the reading is good to a tenth of a layer',
    secondPartMissing: '80 − 35.2 − 0.1 = 44.7; 0.3 + 222 · 0.2 = 44.7',
    firstLayerAll: 'the first layer, and all others alike on top of it',
    expansionLengthTimes: 'expansion: length times coefficient times change of temperature',
    heightsAddedUp: 'heights added up, both pieces shrinking alike',
    feelerLiesBetween: 'the feeler lies between nozzle and part',
    firstLayerLost: 'what the first layer lost is missing from the measured height',
    definition: 'definition',
    gapBetweenNozzle: 'the gap between nozzle and top',
    topLayer: 'top and one layer',
    linearExpansion: 'linear expansion',
  },
  orders: {
    neverSeam: {
      glance: '✕ Never with a seam: print again',
      sentence:
        'Print the whole again: a part that holds a person, heat, mains or a raised load is never saved with a seam.',
    },
    goOn: (a: { layer: number; at: Amount }, p: Print) => ({
      glance: `▸ Layer ${a.layer} · Z ${p(a.at)}`,
      sentence: `Go on with layer ${a.layer}, nozzle at Z = ${p(a.at)}.`,
    }),
    between: (a: { below: number }) => ({
      glance: '✕ Do not start yet',
      sentence: `Do not start yet: the top lies between layers ${a.below} and ${a.below + 1} and fits neither.`,
    }),
    notSettled: (a: { layer: number }) => ({
      glance: '⟳ Measure again first',
      sentence: `Measure again before starting: layer ${a.layer} comes next, but how well it fits is not settled.`,
    }),
    anyOf: (a: { from: number; to: number }) => ({
      glance: '⟳ Measure again first',
      sentence: `Measure again before starting: the last layer may be any from ${a.from} to ${a.to}.`,
    }),
    glueOn: (a: { height: Amount; layers: number }, p: Print) => ({
      glance: `▸ Second part, ${a.layers} layers`,
      sentence: `Print the rest as a second part of ${p(a.height)}, ${a.layers} layers, and glue it on.`,
    }),
    restAbout: (a: { height: Amount; layers: number }, p: Print) => ({
      glance: `⟳ About ${a.layers} layers`,
      sentence: `Measure again if the height matters: the rest comes to ${p(a.height)}, about ${a.layers} layers.`,
    }),
  },
  steps: {
    printWhole: 'Find why it stopped, then print it whole, in one go.',
    fivePlaces: 'Measure five places of the top and take the mean, or feel it with the nozzle.',
    feelThrice: 'Feel the same place three times, coming down each time, with a steel feeler.',
    steelFeeler: 'Take a steel feeler instead of paper.',
    feelInstead: 'Feel the top with the nozzle instead: how far the first layer was pressed then drops out.',
    warmIt:
      'Warm it as it was: part untouched, bed at its printing heat for half an hour; then choose “as warm as it was” and measure. Nearly all of the shrinkage then drops out.',
    hourAtHeat: 'Give the bed an hour at its printing heat, cover shut, and measure then.',
    knownTo: (a: { half: Amount }, p: Print) => `It would be settled if the top were known to ± ${p(a.half)}.`,
    topStands: (a: { off: Amount; higher: boolean; first: Amount; layer: Amount }, p: Print) =>
      `The top stands ${p(a.off)} ${a.higher ? 'higher' : 'lower'} than its layer should: the first new layer comes out ${p(a.first)} thick instead of ${p(a.layer)}.`,
    cutOff: 'Cut off strings and thin layers down to the sound one, and blow the chips away.',
    leavePart:
      'Leave the part alone on the bed. If it has moved at all, or rocks, do not go on: print the rest as a second part.',
    findAxes:
      'Motors were off: find X and Y again, and Z beside the part, never on it. First try the travel round the part with the nozzle 5 mm higher.',
    heatUp: (a: { layer: number }) =>
      `Bed at its printing heat for half an hour, then the nozzle. Let it prime beside the part, wipe it, and start layer ${a.layer}; everything below is left out of the job.`,
    slowly:
      'Slowly for the first new layer, and 5 to 10 °C hotter: the joint is cold on one side and is the weakest of the part.',
    lookForBlob:
      'Look for a blob or a curled corner where you measured, and for half a layer: the nozzle may have stopped in the middle of one. Cut back to a whole layer and measure again.',
    compareWithJob:
      'Compare layer height and first layer with the job; layers of several heights cannot be counted like this.',
    shiftAll: (a: { layer: number; at: Amount }, p: Print) =>
      `If it stays so: start layer ${a.layer} at Z = ${p(a.at)} and shift all that follows by as much. The whole then ends off by the misfit.`,
    ifSeamIsFine: (a: { layer: number; at: Amount }, p: Print) =>
      `If a visible seam does not matter: layer ${a.layer}, nozzle at Z = ${p(a.at)}.`,
    doNotGuess:
      'One layer too high leaves a gap that never closes; one too low drives the nozzle into the part. Do not guess.',
    cutDrawing: (a: { at: Amount }, p: Print) =>
      `Cut the drawing at ${p(a.at)} and print what lies above, cut face down.`,
    wholeEnds: (a: { off: Amount; low: boolean; layers: number }, p: Print) =>
      `The whole ends ${p(a.off)} ${a.low ? 'too low' : 'too high'} with ${a.layers} whole layers.`,
    oddFirst: (a: { first: Amount; set: Amount }, p: Print) =>
      `A first layer of ${p(a.first)} instead of ${p(a.set)} takes that up.`,
    sandTop:
      'Cut the torn layers off the first part, sand its top flat on a plate, and measure it after that, not before.',
    dowels:
      'Two dowels of filament in matching holes keep the halves from sliding. Try them dry; then glue, press and let it set under weight.',
  },
  contradictions: {
    noRoomAbove: (a: { height: Amount; whole: Amount }, p: Print) =>
      `The part is ${p(a.height)} high and the whole ${p(a.whole)}: that leaves less than a first layer. Which of the two is right?`,
    lessThanFirst: (a: { height: Amount; first: Amount }, p: Print) =>
      `${p(a.height)} is less than half of a first layer of ${p(a.first)}. Which of the two is right?`,
  },
  figure: {
    label: 'The part on the bed, and its top among the layers',
    top: (height: string) => `top as printed ${height}`,
    layers: 'layers, and the doubt',
    shrunk: (by: string) => `shrunk since: ${by}`,
  },
};
export default en;
