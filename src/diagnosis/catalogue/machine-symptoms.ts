import type { Symptom } from '../types';
import { shares } from './make';

/** What the machine itself does. Shares are common practice: no count of real cases was found. */
export const machineSymptoms = [
  {
    id: 'screw-spins',
    causes: shares({
      'thread-stripped': 0.5,
      'nut-turns': 0.18,
      'screw-short': 0.12,
      'insert-turns': 0.1,
      'thread-wrong': 0.06,
    }),
    none: 0.04,
  },
  {
    id: 'gantry-sinks',
    causes: shares({
      'screw-runs-back': 0.4,
      'coupling-slips': 0.18,
      'z-motor-off': 0.14,
      'wheels-loose': 0.12,
      'nut-worn': 0.1,
    }),
    none: 0.06,
  },
  {
    id: 'far-too-hot',
    hazard: 'heat',
    causes: shares({
      'sensor-fallen': 0.34,
      'switch-shorted': 0.22,
      'sensor-type': 0.15,
      'sensor-contact': 0.13,
      'heater-strong': 0.1,
      'relay-closed': 0.02,
    }),
    none: 0.04,
  },
  {
    id: 'temperature-wanders',
    hazard: 'heat',
    causes: shares({
      'sensor-loose': 0.24,
      'sensor-contact': 0.2,
      'loop-untuned': 0.16,
      'heater-contact': 0.14,
      'block-blown': 0.12,
      'supply-weak': 0.08,
    }),
    none: 0.06,
  },
  {
    id: 'smell-or-warm-plug',
    hazard: 'heat',
    first: 'breaker',
    causes: shares({
      'heater-contact': 0.34,
      'supply-terminal': 0.2,
      'plastic-on-block': 0.2,
      'board-hot': 0.12,
      'switch-shorted': 0.06,
      'insulation-damaged': 0.02,
    }),
    none: 0.06,
  },
  {
    id: 'one-room',
    causes: shares({
      draught: 0.26,
      'filament-damp': 0.22,
      'bed-cold': 0.16,
      'frame-grows': 0.1,
      'stand-uneven': 0.07,
      'supply-weak': 0.06,
      'bed-greasy': 0.06,
    }),
    none: 0.07,
  },
  {
    id: 'comes-and-goes',
    hazard: 'shock',
    causes: shares({
      'plug-loose': 0.29,
      'cable-broken': 0.23,
      'supply-weak': 0.1,
      'limit-switch-worn': 0.1,
      'board-hot': 0.1,
      'wires-disturb': 0.08,
      'earth-missing': 0.015,
      'insulation-damaged': 0.015,
    }),
    none: 0.07,
  },
] as const satisfies readonly Symptom[];
