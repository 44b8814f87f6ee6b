import type { FirstAct } from '../../types';

/** What is done first, by the danger. Common practice, from memory; what the local emergency service says comes before it. */
const stop: Readonly<Record<FirstAct, { readonly title: string; readonly acts: readonly [string, ...string[]] }>> = {
  fire: {
    title: 'Get out',
    acts: [
      'Get everybody out, and close the door behind you.',
      'Call the fire service from outside.',
      'No water on it: it is live. Do not go back for the plug.',
      'Nobody touches it before it is out, cold, and switched off at the breaker.',
    ],
  },
  held: {
    title: 'Do not touch them',
    acts: [
      'Do not touch whoever the current holds, nor the machine.',
      'Switch off at the breaker or the main switch.',
      'Call the emergency number.',
      'Help once the power is off, and do what the emergency service says. Whoever had a shock goes to a doctor.',
    ],
  },
  breaker: {
    title: 'Switch off at the breaker',
    acts: [
      'Switch off at the breaker or the main switch: never at the plug, nor at the machine.',
      'Touch neither plug, lead, machine nor anything wet before that.',
      'With the power off, pull the plug; one that is hot, charred or wet stays for a qualified person.',
      'Keep it out of use. Whoever felt a shock goes to a doctor, also when well.',
    ],
  },
  unplug: {
    title: 'Switch off and pull the plug',
    acts: [
      'Switch the machine off.',
      'Pull its plug out of the wall, and lay the plug where you can see it. If the plug is hot, charred or wet: the breaker instead.',
      'Let it cool. Smoke or fire: everybody out, call the fire service, no water.',
    ],
  },
};
export default stop;
