import type { Meta } from '../../engine/calculator';

export default {
  topic: 'motion',
  order: 74,
  phone: ['ripples'],
} satisfies Meta;
