import ShelfPack from '@mapbox/shelf-pack';
import { BestAreaFit, BestLongSideFit, BestShortSideFit, pack2D } from 'binpackingjs/2d';
import { packer } from 'guillotine-packer';
import { MaxRectsPacker, Rectangle } from 'maxrects-packer/dist/maxrects-packer.mjs';
import potpack from 'potpack';

export interface Item {
  readonly width: number;
  readonly height: number;
}

export interface Place extends Item {
  readonly x: number;
  readonly y: number;
}

/**
 * A packing library applied to the strip problem. `pack` returns the places of its lowest packing, undefined if it finds
 * none.
 */
export interface Peer {
  readonly name: string;
  /** With more items than this it takes minutes. */
  readonly mostItems: number;
  readonly pack: (
    items: readonly Item[],
    width: number,
    mayTurn: boolean,
    bound: number,
  ) => Place[] | undefined;
}

type BinPacker = (
  items: readonly Item[],
  width: number,
  height: number,
  mayTurn: boolean,
) => Place[] | undefined;

export const peers: readonly Peer[] = [
  { name: 'guillotine-packer', mostItems: 130, pack: leastHeight(guillotinePacker) },
  { name: 'binpackingjs', mostItems: 300, pack: leastHeight(binpacking) },
  { name: 'maxrects-packer', mostItems: 700, pack: leastHeight(maxRects) },
  { name: 'shelf-pack', mostItems: Infinity, pack: bestTurning(shelves) },
  { name: 'potpack', mostItems: Infinity, pack: bestTurning(potpacked) },
];

/** The height up to the far edge of the last place. */
export function usedHeight(places: readonly Place[]): number {
  return places.reduce((most, place) => Math.max(most, place.y + place.height), 0);
}

/**
 * Uses a packer for bins with the least height it manages: the height grows by 0.25% until it fits, then the last step is
 * halved.
 */
function leastHeight(pack: BinPacker): Peer['pack'] {
  return (items, width, mayTurn, bound) => {
    let low = bound - 1;
    for (let step = 0; step <= 400; step++) {
      const height = Math.ceil(bound * (1 + step / 400));
      let best = pack(items, width, height, mayTurn);
      if (best === undefined) {
        low = height;
        continue;
      }
      let high = height;
      while (high - low > 1) {
        const middle = Math.floor((low + high) / 2);
        const places = pack(items, width, middle, mayTurn);
        if (places === undefined) low = middle;
        else {
          high = middle;
          best = places;
        }
      }
      return best;
    }
    return undefined;
  };
}

/**
 * Uses a packer that never turns items: tries them unturned, all lengthwise and all upright, and keeps the lowest packing.
 */
function bestTurning(pack: (items: readonly Item[], width: number) => Place[] | undefined): Peer['pack'] {
  return (items, width, mayTurn) => {
    const turned = ({ width: w, height: h }: Item) => ({ width: h, height: w });
    const lengthwise = items.map((item) =>
      item.height > item.width && item.height <= width ? turned(item) : item,
    );
    const upright = items.map((item) =>
      item.width > item.height || item.width > width ? turned(item) : item,
    );
    const layouts = (mayTurn ? [items, lengthwise, upright] : [items]).flatMap((set) => {
      const places = pack(set, width);
      return places === undefined ? [] : [places];
    });
    return layouts.sort((a, b) => usedHeight(a) - usedHeight(b))[0];
  };
}

function guillotinePacker(
  items: readonly Item[],
  width: number,
  height: number,
  mayTurn: boolean,
): Place[] | undefined {
  const named = items.map((item, index) => ({ ...item, name: String(index) }));
  try {
    const bins = packer({ binWidth: width, binHeight: height, items: named }, { allowRotation: mayTurn });
    return bins?.length === 1 ? bins[0] : undefined;
  } catch {
    // It throws if an item fits no bin.
    return undefined;
  }
}

function binpacking(
  items: readonly Item[],
  width: number,
  height: number,
  mayTurn: boolean,
): Place[] | undefined {
  const boxes = items.map((item) => ({ ...item, constrainRotation: !mayTurn }));
  for (const heuristic of [new BestShortSideFit(), new BestAreaFit(), new BestLongSideFit()]) {
    const { packedBins, unpackedBoxes } = pack2D({ bins: [{ width, height }], boxes, heuristic });
    if (unpackedBoxes.length === 0) return packedBins.flatMap((bin) => [...bin.boxes]);
  }
  return undefined;
}

function maxRects(
  items: readonly Item[],
  width: number,
  height: number,
  mayTurn: boolean,
): Place[] | undefined {
  for (const logic of [0, 1]) {
    const bins = new MaxRectsPacker(width, height, 0, {
      smart: false,
      pot: false,
      square: false,
      allowRotation: mayTurn,
      border: 0,
      logic,
    });
    bins.addArray(items.map((item) => new Rectangle(item.width, item.height)));
    const [bin] = bins.bins;
    if (bins.bins.length === 1 && bin?.rects.every((rect) => !rect.oversized)) {
      return bin.rects.map((rect) => ({ x: rect.x, y: rect.y, width: rect.width, height: rect.height }));
    }
  }
  return undefined;
}

function shelves(items: readonly Item[], width: number): Place[] | undefined {
  const room = items.reduce((sum, item) => sum + item.height, 0);
  const sheet = new ShelfPack(width, room);
  const places: Place[] = [];
  for (const item of [...items].sort((a, b) => b.height - a.height || b.width - a.width)) {
    const bin = sheet.packOne(item.width, item.height);
    if (bin === null) return undefined;
    places.push({ x: bin.x, y: bin.y, width: item.width, height: item.height });
  }
  return places;
}

/** It packs into an almost square area, so heights are scaled until that area is as wide as the strip. */
function potpacked(items: readonly Item[], width: number): Place[] | undefined {
  const area = items.reduce((sum, item) => sum + item.width * item.height, 0);
  for (let scale = (0.95 * width * width) / area; scale > 1e-9; scale *= 0.99) {
    const boxes = items.map((item) => ({ w: item.width, h: item.height * scale, item }));
    if (potpack(boxes).w > width) continue;
    return boxes.map((box) => {
      const { x = 0, y = 0 } = box as { readonly x?: number; readonly y?: number };
      return { x, y: Math.round(y / scale), width: box.item.width, height: box.item.height };
    });
  }
  return undefined;
}
