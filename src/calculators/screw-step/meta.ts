import type { Meta } from '../../engine/calculator';

export default {
  topic: 'z',
  order: 50,
} satisfies Meta;
