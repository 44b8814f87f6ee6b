/** Words of the check “Resume height”. */
const en = {
  inputs: {
    Z_r: {
      label: 'Nozzle height Z at which the leaf just drags',
      hint: 'Nozzle clean and warm, not oozing. Lower it over a sound, flat place of the top until the leaf just drags.',
    },
    g_f: {
      label: 'Thickness of the leaf',
      hint: 'A steel leaf. Paper gives: take ± 0.03 mm.',
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
      label: 'Cooler now than while it printed',
      hint: 'Without the hot nozzle above it the top is a little cooler; a warmer room makes it less.',
    },
    alpha: {
      label: 'Expansion of the plastic',
    },
    s: {
      label: 'First layer pressed thinner than set',
      hint: 'Zero set close to the bed gives a foot that is squeezed wide and a part that is too low by this. Below zero: set too far away.',
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
    plastic: {
      label: 'Plastic',
      options: {},
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
      'The nozzle is hot: hold the leaf with pliers, and let nothing drip on the hand. No fingers between nozzle and part.',
    moveZSmallest:
      'Move Z by the smallest steps near the part; a nozzle that meets it breaks it loose, and the drive is stronger than a finger.',
    neverLetZ: 'Never let Z look for its zero above the part.',
    cuttingSandingBlade: 'Cutting and sanding: the blade away from you, the part clamped, a mask against dust.',
    gluesSolventsGloves:
      'Glues and solvents: gloves, goggles, fresh air, no flame, and what the label says. Some stick skin within seconds.',
  },
  proof:
    'Before the first new layer, stop the nozzle over the top at the Z given, cold or not oozing: a leaf as thick as the new layer must just drag. Glued: measure the whole; it must be as drawn within the error allowed.',
  beware: {
    partMeasuredCold:
      'A part measured cold is lower than it was: PLA by about 0.12 mm, ABS by 0.4 mm for each 100 mm of height. That is most of a layer, or two.',
    assumesAllLayers:
      'It assumes that all layers but the first are alike. Where they change with height, add them up by hand.',
    elephantFootSqueezed:
      'Elephant foot: the squeezed-out first layers stand up at the edge and lift a caliper’s jaw. Trim the edge or measure inside it.',
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
    leafLiesBetween: 'the leaf lies between nozzle and part',
    firstLayerLost: 'what the first layer lost is missing from the measured height',
    definition: 'definition',
    gapBetweenNozzle: 'the gap between nozzle and top',
    topLayer: 'top and one layer',
    linearExpansion: 'linear expansion',
  },
  orders: {},
  steps: {},
};
export default en;
