import type { CutTree } from '#core/domain/cutting-plan';
import { laidParts } from '#core/cutting/tree/cut-tree';
import type { Leftover } from '#core/cutting/tree/cutting-job';

/** How a piece of fabric is placed in its drawing: its length runs to the right, its width down. `scale` is in pixels per 1/320 mm. */
export interface FabricFrame {
  readonly scale: number;
  readonly toX: (along: number) => number;
  readonly toY: (across: number) => number;
  /** Width of the fabric, and how much of its length is drawn. */
  readonly width: number;
  readonly shown: number;
  readonly isBroken: boolean;
  readonly drawingWidth: number;
  readonly drawingHeight: number;
}

const MARGIN = { left: 34, right: 10, top: 24, bottom: 28 };

/** A longer uncut end is drawn shortened to this share of the cut part. */
const UNCUT_SHOWN = 0.3;

/** Fits a piece into a width in pixels. A long uncut end is drawn shortened, so that the patches stay large, unless `isWhole` is set. */
export function frameFabric(
  tree: CutTree,
  maxWidth: number,
  maxHeight: number,
  isWhole = false,
): FabricFrame {
  const used = usedLength(tree);
  const shown =
    isWhole || used === 0
      ? tree.height
      : Math.min(tree.height, Math.max(used * (1 + UNCUT_SHOWN), tree.width / 4));
  const [roomX, roomY] = [maxWidth - MARGIN.left - MARGIN.right, maxHeight - MARGIN.top - MARGIN.bottom];
  const scale = Math.min(roomX / shown, roomY / tree.width);
  return {
    scale,
    toX: (along) => MARGIN.left + along * scale,
    toY: (across) => MARGIN.top + across * scale,
    width: tree.width,
    shown,
    isBroken: shown < tree.height,
    drawingWidth: MARGIN.left + MARGIN.right + shown * scale,
    drawingHeight: MARGIN.top + MARGIN.bottom + tree.width * scale,
  };
}

/** The length up to the uncut end. */
function usedLength(tree: CutTree): number {
  if (tree.kind !== 'split' || tree.direction === 'along') return tree.kind === 'rest' ? 0 : tree.height;
  const last = tree.parts.at(-1);
  return last?.kind === 'rest' && last.use !== 'margin' ? tree.height - last.height : tree.height;
}

/** Margins and scraps of a tree, with their positions. */
export function restsIn(tree: CutTree, x = 0, y = 0): Leftover[] {
  if (tree.kind === 'rest') {
    return tree.use === 'leftover' ? [] : [{ x, y, width: tree.width, length: tree.height }];
  }
  return laidParts(tree, x, y).flatMap((laid) => restsIn(laid.part, laid.x, laid.y));
}

const DARK_INK = '#1d1812';
const LIGHT_INK = '#fffaf0';

/** The ink with more contrast on a color of six hex digits. */
export function inkOn(swatch: string): string {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(swatch.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  // Relative luminance as in WCAG 2.2. At 0.18, black and white have the same contrast.
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue > 0.18 ? DARK_INK : LIGHT_INK;
}

/** A kind of patch with its names in a drawing. */
export interface LayoutPatch {
  readonly key: string;
  readonly label: string;
  /** `2½ × 4½ in`, as it is cut. */
  readonly size: string;
  /** The project it is for, and the fabric of its list. */
  readonly goesTo: string;
}
