import type { CutTree } from '#core/domain/cutting-plan';
import type { CuttingRule, PatchType, PlacedPatch } from '../tree/cut-plan';

/** The rules that a layout is checked against. */
export interface CutCheck {
  readonly width: number;
  readonly height: number;
  readonly patches: readonly PatchType[];
  readonly rule: CuttingRule;
  /** False where the piece may hold only some of the patches. */
  readonly needsAllCopies: boolean;
  /** The longest cuts that ruler and mat allow, by direction. A cut along the edge of a patch may be longer. */
  readonly longestAcross?: number;
  readonly longestAlong?: number;
}

/** One fault of a layout. `patch` is the index of a type. */
export type CutFault =
  | { readonly code: 'outside' | 'wrong-size' | 'turned-against-print'; readonly place: PlacedPatch }
  | { readonly code: 'overlap'; readonly first: PlacedPatch; readonly second: PlacedPatch }
  | {
      readonly code: 'wrong-copies';
      readonly patch: number;
      readonly expected: number;
      readonly found: number;
    }
  | { readonly code: 'not-cuttable'; readonly places: readonly PlacedPatch[] }
  | { readonly code: 'tree-has-gap' | 'too-many-stages' }
  | { readonly code: 'cut-too-long'; readonly length: number };

interface Box {
  readonly left: number;
  readonly near: number;
  readonly right: number;
  readonly far: number;
}

/**
 * Checks a layout from its cut tree alone and shares no code with the planners: it reads the patches off the tree, compares
 * them in pairs, and cuts them apart again without the tree. A layout without faults can be cut as the tree describes.
 */
export function checkCutPlan(tree: CutTree, check: CutCheck): CutFault[] {
  const cells: { readonly box: Box; readonly leaf: CutTree }[] = [];
  const faults: CutFault[] = [];
  const fabric = { left: 0, near: 0, right: check.width, far: check.height };
  if (!readTree(tree, fabric, cells)) faults.push({ code: 'tree-has-gap' });
  const places = cells.flatMap(({ box, leaf }) => (leaf.kind === 'patch' ? [placeOf(box, leaf)] : []));
  faults.push(
    ...places.flatMap((place) => placeFaults(place, check)),
    ...overlaps(places),
    ...copyFaults(places, check),
  );
  if (!canBeCutApart(places.map(boxOf))) faults.push({ code: 'not-cuttable', places });
  if (check.rule === '2-stage' && !isTwoStage(places.map(boxOf))) faults.push({ code: 'too-many-stages' });
  return [...faults, ...longCuts(tree, check)];
}

/** Walks the tree with the box that each part must fill; false if a size is wrong or the parts do not add up. */
function readTree(tree: CutTree, box: Box, cells: { box: Box; leaf: CutTree }[]): boolean {
  if (tree.width !== box.right - box.left || tree.height !== box.far - box.near) return false;
  if (tree.kind !== 'split') {
    cells.push({ box, leaf: tree });
    return tree.width > 0 && tree.height > 0;
  }
  let { left, near } = box;
  let isSound = tree.parts.length > 1;
  for (const part of tree.parts) {
    const inner =
      tree.direction === 'across'
        ? { left: box.left, right: box.right, near, far: near + part.height }
        : { near: box.near, far: box.far, left, right: left + part.width };
    if (part.kind === 'split' && part.direction === tree.direction) isSound = false;
    if (!readTree(part, inner, cells)) isSound = false;
    if (tree.direction === 'across') near = inner.far;
    else left = inner.right;
  }
  return isSound && (tree.direction === 'across' ? near === box.far : left === box.right);
}

function placeOf(box: Box, leaf: CutTree & { readonly kind: 'patch' }): PlacedPatch {
  const size = { width: box.right - box.left, height: box.far - box.near };
  return { x: box.left, y: box.near, ...size, patch: leaf.patch, turned: leaf.turned };
}

function boxOf(place: Omit<PlacedPatch, 'patch' | 'turned'>): Box {
  return { left: place.x, near: place.y, right: place.x + place.width, far: place.y + place.height };
}

function placeFaults(place: PlacedPatch, { width, height, patches }: CutCheck): CutFault[] {
  const faults: CutFault[] = [];
  const patch = patches[place.patch];
  const isInside =
    place.x >= 0 && place.y >= 0 && place.x + place.width <= width && place.y + place.height <= height;
  if (!isInside) faults.push({ code: 'outside', place });
  const laidWidth = place.turned ? patch?.height : patch?.width;
  const laidHeight = place.turned ? patch?.width : patch?.height;
  if (place.width !== laidWidth || place.height !== laidHeight) faults.push({ code: 'wrong-size', place });
  const isSquare = patch?.width === patch?.height;
  if (place.turned && patch?.mayTurn === false && !isSquare)
    faults.push({ code: 'turned-against-print', place });
  return faults;
}

function overlaps(places: readonly PlacedPatch[]): CutFault[] {
  const byFar = [...places].sort((a, b) => a.y - b.y);
  return byFar.flatMap((first, index) => {
    const faults: CutFault[] = [];
    for (const second of byFar.slice(index + 1)) {
      if (second.y >= first.y + first.height) break;
      if (first.x < second.x + second.width && second.x < first.x + first.width) {
        faults.push({ code: 'overlap', first, second });
      }
    }
    return faults;
  });
}

function copyFaults(places: readonly PlacedPatch[], { patches, needsAllCopies }: CutCheck): CutFault[] {
  return patches.flatMap(({ copies }, patch) => {
    const found = places.filter((place) => place.patch === patch).length;
    const isWrong = needsAllCopies ? found !== copies : found > copies;
    return isWrong ? [{ code: 'wrong-copies', patch, expected: copies, found } satisfies CutFault] : [];
  });
}

/** Groups of boxes, in one direction, that a straight line through the layout separates. */
function groupsBetweenCuts(boxes: readonly Box[], from: 'left' | 'near', to: 'right' | 'far'): Box[][] {
  const groups: Box[][] = [];
  let reach = -Infinity;
  for (const box of [...boxes].sort((a, b) => a[from] - b[from])) {
    if (box[from] >= reach) groups.push([]);
    groups.at(-1)?.push(box);
    reach = Math.max(reach, box[to]);
  }
  return groups;
}

/** Whether cuts from edge to edge can separate all places of a layout. */
export function areCuttable(
  places: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  }[],
): boolean {
  return canBeCutApart(places.map(boxOf));
}

/**
 * Whether cuts from edge to edge can separate all boxes. A possible cut never rules out another, so all are made at once.
 */
function canBeCutApart(boxes: readonly Box[]): boolean {
  if (boxes.length <= 1) return true;
  const across = groupsBetweenCuts(boxes, 'near', 'far');
  if (across.length > 1) return across.every(canBeCutApart);
  const along = groupsBetweenCuts(boxes, 'left', 'right');
  return along.length > 1 && along.every(canBeCutApart);
}

/** Whether strips across the fabric, cross cuts and a trim separate all boxes. */
function isTwoStage(boxes: readonly Box[]): boolean {
  return groupsBetweenCuts(boxes, 'near', 'far').every((strip) =>
    groupsBetweenCuts(strip, 'left', 'right').every((cell) => cell.length === 1),
  );
}

/** Cuts longer than allowed, except along the edge of a patch as long as the cut. */
function longCuts(tree: CutTree, check: CutCheck): CutFault[] {
  if (tree.kind !== 'split') return [];
  const length = tree.direction === 'across' ? tree.width : tree.height;
  const limit = (tree.direction === 'across' ? check.longestAcross : check.longestAlong) ?? Infinity;
  const isEdgeOfPatch = tree.parts.some((part) => part.kind === 'patch');
  const here: CutFault[] = length > limit && !isEdgeOfPatch ? [{ code: 'cut-too-long', length }] : [];
  return [...here, ...tree.parts.flatMap((part) => longCuts(part, check))];
}
