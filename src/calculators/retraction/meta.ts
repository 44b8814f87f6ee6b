import type { Meta } from '../../engine/calculator';

export default {
  topic: 'melt',
  order: 40,
} satisfies Meta;
