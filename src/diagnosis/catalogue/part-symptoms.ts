import type { Symptom } from '../types';
import { shares } from './make';

/** What the printed part shows. Shares are common practice: no count of real cases was found. */
export const partSymptoms = [
  {
    id: 'ridges-regular',
    causes: shares({
      'screw-bent': 0.26,
      'screw-forced': 0.16,
      'layer-off-step': 0.12,
      'loop-untuned': 0.12,
      'gear-eccentric': 0.12,
      'wheel-flat': 0.08,
      'pulley-eccentric': 0.08,
    }),
    none: 0.06,
  },
  {
    id: 'ridges-irregular',
    causes: shares({
      'wheels-loose': 0.18,
      'feed-slips': 0.14,
      'filament-uneven': 0.12,
      'screw-dry': 0.12,
      'nozzle-blocked': 0.1,
      'filament-damp': 0.1,
      'sensor-loose': 0.08,
      'spool-drags': 0.08,
    }),
    none: 0.08,
  },
  {
    id: 'first-layer-side',
    causes: shares({
      'bed-tilted': 0.36,
      'sides-unequal': 0.22,
      'bed-warped': 0.12,
      'wheels-loose': 0.1,
      'adjuster-loose': 0.08,
      'crumb-under-plate': 0.07,
    }),
    none: 0.05,
  },
  {
    id: 'layers-shifted',
    causes: shares({
      'belt-slack': 0.24,
      'pulley-loose': 0.18,
      'print-hit': 0.16,
      'carriage-binds': 0.12,
      'driver-hot': 0.1,
      'accel-high': 0.1,
      'cable-snags': 0.04,
    }),
    none: 0.06,
  },
  {
    id: 'hairs',
    causes: shares({
      'retraction-short': 0.28,
      'filament-damp': 0.26,
      'melt-hot': 0.22,
      'nozzle-worn': 0.07,
      'tube-gap': 0.06,
      'feeder-loose': 0.06,
    }),
    none: 0.05,
  },
  {
    id: 'slender-wobbles',
    causes: shares({
      'part-sways': 0.4,
      'layers-warm': 0.2,
      'wheels-loose': 0.12,
      'base-small': 0.11,
      'over-fed': 0.1,
    }),
    none: 0.07,
  },
  {
    id: 'lets-go',
    causes: shares({
      'bed-greasy': 0.32,
      'gap-wide': 0.22,
      'bed-cold': 0.12,
      draught: 0.1,
      'base-small': 0.09,
      'surface-worn': 0.06,
      'bed-tilted': 0.04,
    }),
    none: 0.05,
  },
  {
    id: 'starved-band',
    causes: shares({
      'feed-slips': 0.2,
      'spool-drags': 0.2,
      'nozzle-blocked': 0.18,
      'heat-creeps': 0.16,
      'feed-motor-hot': 0.08,
      'filament-damp': 0.07,
      'filament-uneven': 0.06,
    }),
    none: 0.05,
  },
  {
    id: 'corner-ripples',
    causes: shares({
      'accel-high': 0.34,
      'belt-slack': 0.24,
      'wheels-loose': 0.14,
      'frame-loose': 0.12,
      'pulley-loose': 0.1,
    }),
    none: 0.06,
  },
  {
    id: 'oval-holes',
    causes: shares({
      'belt-slack': 0.26,
      'frame-askew': 0.18,
      'belts-unequal': 0.16,
      'pulley-loose': 0.14,
      'wheels-loose': 0.12,
      'steps-wrong': 0.08,
    }),
    none: 0.06,
  },
] as const satisfies readonly Symptom[];
