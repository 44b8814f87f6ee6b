import type { Meta } from '../../engine/calculator';

export default {
  topic: 'melt',
  order: 150,
} satisfies Meta;
