import type { Meta } from '../../engine/calculator';

export default {
  topic: 'motion',
  order: 30,
} satisfies Meta;
