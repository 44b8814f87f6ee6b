import type { Meta } from '../../engine/calculator';

export default {
  topic: 'motion',
  order: 72,
  phone: ['clicks'],
} satisfies Meta;
