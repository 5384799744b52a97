import type { ProjectLook } from './drawings/project';

/** How the pieces look in their photos, by the name a stage gives. */
export const DEMO_PHOTOS: Readonly<Record<string, { readonly caption: string; readonly look: ProjectLook }>> = {
  lantern: {
    caption: 'Laid out on the kitchen table before packing',
    look: photo(
      0,
      1,
      0,
      ['plain #33524a #33524a', 'wave #e6c87c #f4e3b3', 'check #8f3f31 #a9584a'],
      null,
      false,
    ),
  },
  kettle: {
    caption: 'Top finished, pressed and ready to go',
    look: photo(
      4,
      1.25,
      0,
      ['plain #4b6a88 #4b6a88', 'plain #f3eee2 #f3eee2', 'chevron #d8cdb8 #7a8c99'],
      null,
      false,
    ),
  },
  harbor: {
    caption: 'All eight sides measured: 18¼ each',
    look: photo(
      8,
      1,
      0,
      ['chevron #d8cdb8 #7a8c99', 'wave #a9c3d4 #6d93ad', 'plain #f3eee2 #f3eee2'],
      null,
      false,
    ),
  },
  foxglove: {
    caption: 'Bound, center still whole',
    look: photo(6, 1, 0, ['ring #a85a7c #d9a3b8', 'plain #5b3450 #5b3450'], 'plain #5b3450 #5b3450', true),
  },
  candle: {
    caption: 'The hole, on center',
    look: photo(
      0,
      1,
      4 / 24,
      ['dots #efe3c4 #c7953f', 'wave #e6c87c #f4e3b3'],
      'check #7c5738 #9a7450',
      true,
    ),
  },
  runner: {
    caption: 'One long side still to sew',
    look: photo(4, 0.3, 0, ['wave #a9c3d4 #6d93ad', 'cross #c8d6dc #f1f5f5'], 'stripe #59606b #737c88', true),
  },
};

function photo(
  sides: ProjectLook['sides'],
  proportion: number,
  hole: number,
  fabrics: readonly string[],
  binding: string | null,
  isQuilted: boolean,
): ProjectLook {
  return {
    sides,
    proportion,
    hole,
    fabrics: fabrics.map(lookOf),
    binding: binding === null ? null : lookOf(binding),
    isQuilted,
  };
}

/** Reads `print #ground #figure`. */
function lookOf(words: string): ProjectLook['fabrics'][number] {
  const [print, ground, figure] = words.split(' ');
  if (print === undefined || ground === undefined || figure === undefined)
    throw new Error(`Not a fabric: ${words}`);
  return { print: print as ProjectLook['fabrics'][number]['print'], ground, figure };
}
