import type { Meta } from '../../engine/calculator';

export default {
  topic: 'motion',
  order: 110,
} satisfies Meta;
