import ShelfPack from '@mapbox/shelf-pack';
import { BestAreaFit, BestLongSideFit, BestShortSideFit, pack2D } from 'binpackingjs/2d';
import { packer } from 'guillotine-packer';
import { MaxRectsPacker, Rectangle } from 'maxrects-packer/dist/maxrects-packer.mjs';
import potpack from 'potpack';

export interface Piece {
  readonly width: number;
  readonly height: number;
}

export interface Place extends Piece {
  readonly x: number;
  readonly y: number;
}

/** A packing library put to the strip problem: the places of a packing of least height, undefined if it cannot. */
export interface Peer {
  readonly name: string;
  /** More pieces than this take it minutes. */
  readonly mostPieces: number;
  readonly pack: (
    pieces: readonly Piece[],
    width: number,
    mayTurn: boolean,
    bound: number,
  ) => Place[] | undefined;
}

type BinPacker = (
  pieces: readonly Piece[],
  width: number,
  height: number,
  mayTurn: boolean,
) => Place[] | undefined;

export const peers: readonly Peer[] = [
  { name: 'guillotine-packer', mostPieces: 130, pack: leastHeight(guillotinePacker) },
  { name: 'binpackingjs', mostPieces: 300, pack: leastHeight(binpacking) },
  { name: 'maxrects-packer', mostPieces: 700, pack: leastHeight(maxRects) },
  { name: 'shelf-pack', mostPieces: Infinity, pack: bestTurning(shelves) },
  { name: 'potpack', mostPieces: Infinity, pack: bestTurning(potpacked) },
];

/** Height up to the last place. */
export function usedHeight(places: readonly Place[]): number {
  return places.reduce((most, place) => Math.max(most, place.y + place.height), 0);
}

/** A packer for bins, given the strip's width and the least height it can do: up by 0.25 %, then halving the last step. */
function leastHeight(pack: BinPacker): Peer['pack'] {
  return (pieces, width, mayTurn, bound) => {
    let low = bound - 1;
    for (let step = 0; step <= 400; step++) {
      const height = Math.ceil(bound * (1 + step / 400));
      let best = pack(pieces, width, height, mayTurn);
      if (best === undefined) {
        low = height;
        continue;
      }
      let high = height;
      while (high - low > 1) {
        const middle = Math.floor((low + high) / 2);
        const places = pack(pieces, width, middle, mayTurn);
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

/** A packer that never turns: all as they are, all lying, all standing, whichever is lowest. */
function bestTurning(pack: (pieces: readonly Piece[], width: number) => Place[] | undefined): Peer['pack'] {
  return (pieces, width, mayTurn) => {
    const turned = ({ width: w, height: h }: Piece) => ({ width: h, height: w });
    const lying = pieces.map((piece) =>
      piece.height > piece.width && piece.height <= width ? turned(piece) : piece,
    );
    const standing = pieces.map((piece) =>
      piece.width > piece.height || piece.width > width ? turned(piece) : piece,
    );
    const layouts = (mayTurn ? [pieces, lying, standing] : [pieces]).flatMap((set) => {
      const places = pack(set, width);
      return places === undefined ? [] : [places];
    });
    return layouts.sort((a, b) => usedHeight(a) - usedHeight(b))[0];
  };
}

function guillotinePacker(
  pieces: readonly Piece[],
  width: number,
  height: number,
  mayTurn: boolean,
): Place[] | undefined {
  const items = pieces.map((piece, index) => ({ ...piece, name: String(index) }));
  try {
    const bins = packer({ binWidth: width, binHeight: height, items }, { allowRotation: mayTurn });
    return bins?.length === 1 ? bins[0] : undefined;
  } catch {
    // It throws where a piece fits no bin.
    return undefined;
  }
}

function binpacking(
  pieces: readonly Piece[],
  width: number,
  height: number,
  mayTurn: boolean,
): Place[] | undefined {
  const boxes = pieces.map((piece) => ({ ...piece, constrainRotation: !mayTurn }));
  for (const heuristic of [new BestShortSideFit(), new BestAreaFit(), new BestLongSideFit()]) {
    const { packedBins, unpackedBoxes } = pack2D({ bins: [{ width, height }], boxes, heuristic });
    if (unpackedBoxes.length === 0) return packedBins.flatMap((bin) => [...bin.boxes]);
  }
  return undefined;
}

function maxRects(
  pieces: readonly Piece[],
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
    bins.addArray(pieces.map((piece) => new Rectangle(piece.width, piece.height)));
    const [bin] = bins.bins;
    if (bins.bins.length === 1 && bin?.rects.every((rect) => !rect.oversized)) {
      return bin.rects.map((rect) => ({ x: rect.x, y: rect.y, width: rect.width, height: rect.height }));
    }
  }
  return undefined;
}

function shelves(pieces: readonly Piece[], width: number): Place[] | undefined {
  const room = pieces.reduce((sum, piece) => sum + piece.height, 0);
  const sheet = new ShelfPack(width, room);
  const places: Place[] = [];
  for (const piece of [...pieces].sort((a, b) => b.height - a.height || b.width - a.width)) {
    const bin = sheet.packOne(piece.width, piece.height);
    if (bin === null) return undefined;
    places.push({ x: bin.x, y: bin.y, width: piece.width, height: piece.height });
  }
  return places;
}

/** It packs into a near square; heights are scaled so that its square is as wide as the strip. */
function potpacked(pieces: readonly Piece[], width: number): Place[] | undefined {
  const area = pieces.reduce((sum, piece) => sum + piece.width * piece.height, 0);
  for (let scale = (0.95 * width * width) / area; scale > 1e-9; scale *= 0.99) {
    const boxes = pieces.map((piece) => ({ w: piece.width, h: piece.height * scale, piece }));
    if (potpack(boxes).w > width) continue;
    return boxes.map((box) => {
      const { x = 0, y = 0 } = box as { readonly x?: number; readonly y?: number };
      return { x, y: Math.round(y / scale), width: box.piece.width, height: box.piece.height };
    });
  }
  return undefined;
}
