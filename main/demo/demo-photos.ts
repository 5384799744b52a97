import type { ProjectLook } from './drawings/project';

interface DemoPhoto {
  readonly caption: string;
  readonly look: ProjectLook;
}

/** The photos of the demo projects, by the name a stage gives. */
export const DEMO_PHOTOS: Readonly<Record<string, DemoPhoto>> = {
  lantern: {
    caption: 'Laid out on the kitchen table before packing',
    look: lookOf({ fabrics: ['plain #33524a #33524a', 'wave #e6c87c #f4e3b3', 'check #8f3f31 #a9584a'] }),
  },
  kettle: {
    caption: 'Top finished, pressed and ready to go',
    look: lookOf({
      sides: 4,
      proportion: 1.25,
      fabrics: ['plain #4b6a88 #4b6a88', 'plain #f3eee2 #f3eee2', 'chevron #d8cdb8 #7a8c99'],
    }),
  },
  harbor: {
    caption: 'All eight sides measured: 18¼ in each',
    look: lookOf({
      sides: 8,
      fabrics: ['chevron #d8cdb8 #7a8c99', 'wave #a9c3d4 #6d93ad', 'plain #f3eee2 #f3eee2'],
    }),
  },
  saucer: {
    caption: 'Bound, center not cut yet',
    look: lookOf({
      sides: 6,
      fabrics: ['ring #a85a7c #d9a3b8', 'plain #5b3450 #5b3450'],
      binding: 'plain #5b3450 #5b3450',
      isQuilted: true,
    }),
  },
  candle: {
    caption: 'The hole, right on center',
    look: lookOf({
      hole: 4 / 24,
      fabrics: ['dots #efe3c4 #c7953f', 'wave #e6c87c #f4e3b3'],
      binding: 'check #7c5738 #9a7450',
      isQuilted: true,
    }),
  },
  runner: {
    caption: 'One long side still to sew',
    look: lookOf({
      sides: 4,
      proportion: 0.3,
      fabrics: ['wave #a9c3d4 #6d93ad', 'cross #c8d6dc #f1f5f5'],
      binding: 'stripe #59606b #737c88',
      isQuilted: true,
    }),
  },
};

interface PhotoSubject extends Partial<Omit<ProjectLook, 'fabrics' | 'binding'>> {
  /** Each as `print #ground #figure`. */
  readonly fabrics: readonly string[];
  readonly binding?: string;
}

/** A round, unquilted, unbound project of equal width and height, unless the subject says otherwise. */
function lookOf({ fabrics, binding, ...shape }: PhotoSubject): ProjectLook {
  return {
    sides: 0,
    proportion: 1,
    hole: 0,
    isQuilted: false,
    ...shape,
    fabrics: fabrics.map(fabricLookOf),
    binding: binding === undefined ? null : fabricLookOf(binding),
  };
}

function fabricLookOf(words: string): ProjectLook['fabrics'][number] {
  const [print, ground, figure] = words.split(' ');
  if (print === undefined || ground === undefined || figure === undefined)
    throw new Error(`Not a fabric: ${words}`);
  return { print: print as ProjectLook['fabrics'][number]['print'], ground, figure };
}
