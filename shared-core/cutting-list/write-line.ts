import { formatLengthForEditing } from '#core/units/format-length';
import type { LengthDisplay } from '#core/units/unit-system';
import type { ListLine, ListPatch } from './list-reading';

/** The start of a line that is left out: it is read as a note. */
export const LEFT_OUT = '# ';

/** Another text for a line that settles what one of its marks asks. */
export interface Settled {
  readonly as: 'fabric' | 'for-one-block' | 'for-all-blocks';
  readonly text: string;
}

/** The ways to settle a line that needs a yes or no and no number. */
export function waysToSettle({ text, marks }: Pick<ListLine, 'text' | 'marks'>): readonly Settled[] {
  const line = text.trimEnd().replace(/:$/u, '');
  return marks.flatMap(({ code }): readonly Settled[] => {
    if (code === 'name-unclear') return [{ as: 'fabric', text: `${line}:` }];
    if (code !== 'each-or-all') return [];
    return [
      { as: 'for-one-block', text: `${line}, for each block:` },
      { as: 'for-all-blocks', text: `${line}, for all blocks:` },
    ];
  });
}

type PatchToWrite = Pick<ListPatch, 'shape' | 'width' | 'length' | 'cut' | 'role' | 'block'>;

const DIAGONALS: Readonly<Record<ListPatch['shape'], string>> = {
  square: '',
  rectangle: '',
  strip: '',
  'half-square-triangle': ', cut once on the diagonal',
  'half-rectangle-triangle': ', cut once on the diagonal',
  'quarter-square-triangle': ', cut twice on the diagonal',
};

/** Patches as a line that is read back as they are: `From the Red: (4) 3 1/2 in x 4 1/2 in rectangles`. */
export function writeListLine(
  { shape, width, length, cut, role, block }: PatchToWrite,
  display: LengthDisplay,
): string {
  const size = (one: NonNullable<typeof length>) => formatLengthForEditing(one, display);
  const across = length === null ? 'WOF' : size(length);
  const what = length === null ? 'strips' : width === length ? 'squares' : 'rectangles';
  const fabric = role === null ? '' : `From ${role}: `;
  return `${fabric}(${String(cut)}) ${size(width)} x ${across} ${what}${DIAGONALS[shape]}${block === null ? '' : ', in all'}`;
}
