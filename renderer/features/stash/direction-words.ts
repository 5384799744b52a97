import type { PrintDirection } from '#core/domain/stash';

export const DIRECTION_WORDS: Readonly<Record<PrintDirection, string>> = {
  any: 'Non-directional',
  'one-way': 'One-way',
  'two-way': 'Two-way',
};
