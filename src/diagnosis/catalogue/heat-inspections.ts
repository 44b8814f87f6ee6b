import { measured, seen, sorted } from './make';

const LOOKED = [{ id: 'earth' }, { id: 'insulation' }, { id: 'none' }, { id: 'sound' }, { id: 'unsure' }] as const;
const TESTED = [{ id: 'earth' }, { id: 'insulation' }, { id: 'relay' }, { id: 'sound' }, { id: 'unsure' }] as const;

export const heatInspections = [
  seen('feel', 'sensor-tug', {
    minutes: 2,
    tells: { 'sensor-fallen': 0.96, 'sensor-loose': 0.87, 'sensor-contact': 0.15 },
    falsely: 0.04,
  }),
  measured('sensor-ohms', 'sensor-check', {
    minutes: 6,
    tools: ['multimeter', 'room-thermometer'],
    tells: { 'sensor-contact': 0.82, 'sensor-type': 0.85 },
    falsely: 0.05,
  }),
  seen('look', 'sensor-setting', { minutes: 4, powered: true, tells: { 'sensor-type': 0.92 }, falsely: 0.05 }),
  seen('do', 'switch-ohms', { minutes: 7, tools: ['multimeter'], tells: { 'switch-shorted': 0.88 }, falsely: 0.05 }),
  measured('heater-ohms', 'sensor-check', {
    minutes: 5,
    tools: ['multimeter'],
    tells: { 'heater-strong': 0.94, 'heater-contact': 0.3 },
    falsely: 0.04,
  }),
  measured('heating-curve', 'heater-check', {
    minutes: 8,
    powered: true,
    tools: ['stopwatch'],
    tells: {
      'heater-strong': 0.85,
      'sensor-loose': 0.75,
      'sensor-type': 0.6,
      'supply-weak': 0.65,
      'heater-contact': 0.55,
      'sensor-contact': 0.4,
    },
    falsely: 0.08,
  }),
  seen('look', 'temperature-swing', {
    minutes: 6,
    powered: true,
    tells: { 'loop-untuned': 0.88, 'sensor-loose': 0.3, 'block-blown': 0.35, 'supply-weak': 0.25 },
    falsely: 0.08,
  }),
  seen('look', 'fan-drop', {
    minutes: 3,
    powered: true,
    tells: { 'block-blown': 0.88, 'sensor-loose': 0.25, 'loop-untuned': 0.35, 'supply-weak': 0.2 },
    falsely: 0.07,
  }),
  seen('look', 'sleeve-look', {
    minutes: 1,
    tells: { 'block-blown': 0.82, 'plastic-on-block': 0.4, 'sensor-fallen': 0.2 },
    falsely: 0.1,
  }),
  seen('look', 'plug-look', {
    minutes: 4,
    tells: { 'heater-contact': 0.88, 'plug-loose': 0.2, 'supply-terminal': 0.1 },
    falsely: 0.05,
  }),
  seen('look', 'terminal-look', { minutes: 6, tells: { 'supply-terminal': 0.9, 'supply-weak': 0.3 }, falsely: 0.05 }),
  seen('look', 'block-look', { minutes: 2, tells: { 'plastic-on-block': 0.92 }, falsely: 0.08 }),
  seen('do', 'supply-volts', {
    minutes: 5,
    powered: true,
    tools: ['multimeter'],
    tells: { 'supply-weak': 0.9, 'supply-terminal': 0.5, 'heater-contact': 0.1 },
    falsely: 0.05,
  }),
  seen('do', 'plugs-one-by-one', {
    minutes: 9,
    tells: { 'plug-loose': 0.88, 'sensor-contact': 0.35, 'z-motor-off': 0.6 },
    falsely: 0.1,
  }),
  seen('do', 'wire-bend', {
    minutes: 6,
    tools: ['multimeter'],
    tells: { 'cable-broken': 0.86, 'sensor-contact': 0.75, 'plug-loose': 0.15 },
    falsely: 0.05,
  }),
  seen('listen', 'switch-click', {
    minutes: 3,
    powered: true,
    tells: { 'limit-switch-worn': 0.87, 'cable-broken': 0.25, 'plug-loose': 0.25 },
    falsely: 0.05,
  }),
  seen('look', 'wire-route', { minutes: 2, tells: { 'wires-disturb': 0.9 }, falsely: 0.25 }),
  seen('do', 'calm-off', {
    minutes: 4,
    powered: true,
    tells: { 'wires-disturb': 0.87, 'cable-broken': 0.3, 'supply-weak': 0.35 },
    falsely: 0.07,
  }),
  sorted('look', 'mains-look', LOOKED, {
    minutes: 3,
    given: {
      'earth-missing': { earth: 72, insulation: 3, none: 1, sound: 17, unsure: 7 },
      'insulation-damaged': { earth: 3, insulation: 76, none: 1, sound: 13, unsure: 7 },
      'relay-closed': { earth: 3, insulation: 3, none: 1, sound: 86, unsure: 7 },
    },
    otherwise: { earth: 3, insulation: 3, none: 30, sound: 57, unsure: 7 },
  }),
  sorted('do', 'mains-test', TESTED, {
    minutes: 60,
    qualified: true,
    given: {
      'earth-missing': { earth: 90, insulation: 1, relay: 1, sound: 3, unsure: 5 },
      'insulation-damaged': { earth: 1, insulation: 90, relay: 1, sound: 3, unsure: 5 },
      'relay-closed': { earth: 1, insulation: 1, relay: 90, sound: 3, unsure: 5 },
    },
    otherwise: { earth: 2, insulation: 2, relay: 2, sound: 89, unsure: 5 },
  }),
];
