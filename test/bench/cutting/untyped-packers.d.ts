declare module '@mapbox/shelf-pack' {
  interface ShelfBin {
    readonly x: number;
    readonly y: number;
    readonly w: number;
    readonly h: number;
  }
  // eslint-disable-next-line no-restricted-syntax -- the library has no other export
  export default class ShelfPack {
    constructor(width: number, height: number, options?: { readonly autoResize?: boolean });
    packOne(width: number, height: number): ShelfBin | null;
  }
}

// Its own declarations belong to an entry point that plain Node cannot load.
declare module 'maxrects-packer/dist/maxrects-packer.mjs' {
  export class Rectangle {
    constructor(width: number, height: number);
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly oversized: boolean;
  }
  export class MaxRectsPacker {
    constructor(
      width: number,
      height: number,
      padding: number,
      options: {
        readonly smart: boolean;
        readonly pot: boolean;
        readonly square: boolean;
        readonly allowRotation: boolean;
        readonly border: number;
        /** 0 fits by area, 1 by edge. */
        readonly logic: number;
      },
    );
    readonly bins: readonly { readonly rects: readonly Rectangle[] }[];
    addArray(rectangles: readonly Rectangle[]): void;
  }
}
