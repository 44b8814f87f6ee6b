import type { Meta } from '../../engine/calculator';

export default {
  topic: 'z',
  order: 100,
} satisfies Meta;
