import { type Length, lengthFromUnits } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import type { BackingInput } from './input';

/** What a backing is cut from, in 1/320 mm. */
export interface PanelCloth {
  readonly width: Length;
  readonly seam: Length;
  /** Cut sizes are rounded up to a multiple of this. */
  readonly cutStep: Length;
}

/**
 * How the last panel is had, where a whole one is more than is needed. whole: cut from selvage to selvage and trimmed;
 * along: strips cut side by side along the cloth and joined end to end, the print upright; across: strips cut across the cloth.
 */
export type LastPanel = 'whole' | 'along' | 'across';

/** One way of making a backing; lengths in 1/320 mm. */
export interface PanelWay {
  readonly cloth: PanelCloth;
  /** up: panels stand upright, their seams run up the piece; across: they lie, their seams run across it. */
  readonly panelsRun: 'up' | 'across';
  readonly panels: number;
  readonly panelLength: Length;
  readonly last: LastPanel;
  /** Cut width of the last panel, rounded up; what is beyond the backing is trimmed. */
  readonly lastWidth: Length;
  /** Pieces the last panel is joined from; 1 where it is whole. */
  readonly lastPieces: number;
  /** Cut length of each of these pieces; the last one is trimmed. */
  readonly lastPieceLength: Length;
  /** Off the bolt, before any extra. */
  readonly clothLength: Length;
  /** All seams, joins within the last panel included. */
  readonly seamLength: Length;
}

/** More than this is patchwork, not a backing. */
export const MOST_PANELS = 30;

/**
 * Every way in which cloth of this width makes a backing of `width` by `length`, shortest cloth first; of equal ones the
 * one with less to sew. Empty where the seams eat the cloth or too many panels are needed.
 */
export function panelWays(
  backing: { readonly width: Length; readonly length: Length },
  cloth: PanelCloth,
  printRuns: BackingInput['printRuns'],
): readonly PanelWay[] {
  const up =
    printRuns === 'across-the-cloth'
      ? []
      : waysToCover(backing.width, backing.length, cloth, 'up', printRuns);
  const across =
    printRuns === 'up-the-cloth'
      ? []
      : waysToCover(backing.length, backing.width, cloth, 'across', printRuns);
  return [...up, ...across].sort(
    (one, other) => one.clothLength - other.clothLength || one.seamLength - other.seamLength,
  );
}

function waysToCover(
  span: Length,
  panelLength: Length,
  cloth: PanelCloth,
  panelsRun: PanelWay['panelsRun'],
  printRuns: BackingInput['printRuns'],
): readonly PanelWay[] {
  const panels = piecesToReach(span, cloth.width, cloth.seam);
  if (panels === null) return [];
  const joins = panels - 1;
  const lastNeed = span - joins * (cloth.width - 2 * cloth.seam);
  const lastWidth = lengthFromUnits(Math.min(cloth.width, roundUpTo(lastNeed, cloth.cutStep)));
  const common = { cloth, panelsRun, panels, panelLength, lastWidth };
  const whole: PanelWay = {
    ...common,
    last: 'whole',
    lastPieces: 1,
    lastPieceLength: panelLength,
    clothLength: lengthFromUnits(panels * panelLength),
    seamLength: lengthFromUnits(joins * panelLength),
  };
  if (joins === 0) return [whole];
  const pieced = [stripsAlong(whole), printRuns === 'any-way' ? stripsAcross(whole) : null];
  return [whole, ...pieced.filter((way) => way !== null)];
}

/** Strips lie side by side in one length of cloth, as many as its width holds, and are joined end to end. */
function stripsAlong(whole: PanelWay): PanelWay | null {
  const { cloth, lastWidth, panelLength } = whole;
  const strips = (cloth.width - (cloth.width % lastWidth)) / lastWidth;
  const pieceLength = roundUpTo((panelLength + (strips - 1) * 2 * cloth.seam) / strips, cloth.cutStep);
  return withPiecedLast(whole, 'along', strips, pieceLength, pieceLength);
}

/** Strips run from selvage to selvage, one above the other, and are joined end to end; a print on them lies on its side. */
function stripsAcross(whole: PanelWay): PanelWay | null {
  const { cloth, lastWidth, panelLength } = whole;
  const strips = piecesToReach(panelLength, cloth.width, cloth.seam);
  return strips === null ? null : withPiecedLast(whole, 'across', strips, cloth.width, strips * lastWidth);
}

/** null where it saves nothing: then nobody would do it. */
function withPiecedLast(
  whole: PanelWay,
  last: LastPanel,
  pieces: number,
  pieceLength: number,
  clothForLast: number,
): PanelWay | null {
  if (clothForLast >= whole.panelLength) return null;
  return {
    ...whole,
    last,
    lastPieces: pieces,
    lastPieceLength: lengthFromUnits(pieceLength),
    clothLength: lengthFromUnits((whole.panels - 1) * whole.panelLength + clothForLast),
    seamLength: lengthFromUnits(whole.seamLength + (pieces - 1) * whole.lastWidth),
  };
}

/** Fewest pieces of `size`, joined with `seam` on each, that reach `span`; null where no number up to the most does. */
function piecesToReach(span: number, size: number, seam: number): number | null {
  if (size >= span) return 1;
  const gain = size - 2 * seam;
  if (gain <= 0) return null;
  const rest = (span - 2 * seam) % gain;
  const pieces = (span - 2 * seam - rest) / gain + (rest > 0 ? 1 : 0);
  return pieces <= MOST_PANELS ? pieces : null;
}

/** What is cut off the bolt less the panels, in (1/320 mm)²: the cloth beside the last panel. */
export function leftoverArea(way: PanelWay): number {
  const lastArea = way.lastPieces * way.lastWidth * way.lastPieceLength;
  return way.cloth.width * (way.clothLength - (way.panels - 1) * way.panelLength) - lastArea;
}

export interface BackingDetails {
  /** Cut size of the backing, overhang included. */
  readonly width: Length;
  readonly length: Length;
  /** Ways with the ordinary cloth and with the wide one, the shortest first; either may be empty, never both. */
  readonly ways: readonly PanelWay[];
  readonly wideWays: readonly PanelWay[];
}
