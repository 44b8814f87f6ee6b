import type { Meta } from '../../engine/calculator';

export default {
  topic: 'z',
  order: 60,
} satisfies Meta;
