import type { Meta } from '../../engine/calculator';

export default {
  title: 'Wheel preload',
  question: 'Do the wheels press hard enough to hold the carriage, and not so hard that they go flat?',
  sayings: [
    'carriage wobbles',
    'play in the wheels',
    'eccentric nut',
    'wheel spins freely',
    'flat spots on the wheels',
    'carriage hard to push',
    'arm sags',
    'loose wheels',
    'play in the carriage',
    'rattles',
  ],
  topic: 'motion',
  order: 30,
} satisfies Meta;
