import type { Meta } from '../../engine/calculator';

export default {
  topic: 'z',
  order: 20,
} satisfies Meta;
