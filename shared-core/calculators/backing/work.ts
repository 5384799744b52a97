import { type Length, lengthFromUnits } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';
import type { BackingInput } from './input';

/** What a backing is cut from, in 1/320 mm. */
export interface PanelFabric {
  readonly width: Length;
  readonly seam: Length;
  /** Cut sizes are rounded up to a multiple of this. */
  readonly cutStep: Length;
}

/**
 * How the last panel is had, where a whole one is more than is needed. whole: cut from selvage to selvage and trimmed;
 * along: strips cut side by side along the fabric and joined end to end, the print upright; across: strips cut across the fabric.
 */
export type LastPanel = 'whole' | 'along' | 'across';

/** One way of making a backing; lengths in 1/320 mm. */
export interface PanelWay {
  readonly fabric: PanelFabric;
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
  readonly fabricLength: Length;
  /** All seams, joins within the last panel included. */
  readonly seamLength: Length;
}

/** More than this is patchwork, not a backing. */
export const MOST_PANELS = 30;

/**
 * Every way in which fabric of this width makes a backing of `width` by `length`, shortest fabric first; of equal ones the
 * one with less to sew. Empty where the seams eat the fabric or too many panels are needed.
 */
export function panelWays(
  backing: { readonly width: Length; readonly length: Length },
  fabric: PanelFabric,
  printRuns: BackingInput['printRuns'],
): readonly PanelWay[] {
  const up =
    printRuns === 'across-the-fabric'
      ? []
      : waysToCover(backing.width, backing.length, fabric, 'up', printRuns);
  const across =
    printRuns === 'up-the-fabric'
      ? []
      : waysToCover(backing.length, backing.width, fabric, 'across', printRuns);
  return [...up, ...across].sort(
    (one, other) => one.fabricLength - other.fabricLength || one.seamLength - other.seamLength,
  );
}

function waysToCover(
  span: Length,
  panelLength: Length,
  fabric: PanelFabric,
  panelsRun: PanelWay['panelsRun'],
  printRuns: BackingInput['printRuns'],
): readonly PanelWay[] {
  const panels = piecesToReach(span, fabric.width, fabric.seam);
  if (panels === null) return [];
  const joins = panels - 1;
  const lastNeed = span - joins * (fabric.width - 2 * fabric.seam);
  const lastWidth = lengthFromUnits(Math.min(fabric.width, roundUpTo(lastNeed, fabric.cutStep)));
  const common = { fabric, panelsRun, panels, panelLength, lastWidth };
  const whole: PanelWay = {
    ...common,
    last: 'whole',
    lastPieces: 1,
    lastPieceLength: panelLength,
    fabricLength: lengthFromUnits(panels * panelLength),
    seamLength: lengthFromUnits(joins * panelLength),
  };
  if (joins === 0) return [whole];
  const pieced = [stripsAlong(whole), printRuns === 'any-way' ? stripsAcross(whole) : null];
  return [whole, ...pieced.filter((way) => way !== null)];
}

/** Strips lie side by side in one length of fabric, as many as its width holds, and are joined end to end. */
function stripsAlong(whole: PanelWay): PanelWay | null {
  const { fabric, lastWidth, panelLength } = whole;
  const strips = (fabric.width - (fabric.width % lastWidth)) / lastWidth;
  const pieceLength = roundUpTo((panelLength + (strips - 1) * 2 * fabric.seam) / strips, fabric.cutStep);
  return withPiecedLast(whole, 'along', strips, pieceLength, pieceLength);
}

/** Strips run from selvage to selvage, one above the other, and are joined end to end; a print on them lies on its side. */
function stripsAcross(whole: PanelWay): PanelWay | null {
  const { fabric, lastWidth, panelLength } = whole;
  const strips = piecesToReach(panelLength, fabric.width, fabric.seam);
  return strips === null ? null : withPiecedLast(whole, 'across', strips, fabric.width, strips * lastWidth);
}

/** null where it saves nothing: then nobody would do it. */
function withPiecedLast(
  whole: PanelWay,
  last: LastPanel,
  pieces: number,
  pieceLength: number,
  fabricForLast: number,
): PanelWay | null {
  if (fabricForLast >= whole.panelLength) return null;
  return {
    ...whole,
    last,
    lastPieces: pieces,
    lastPieceLength: lengthFromUnits(pieceLength),
    fabricLength: lengthFromUnits((whole.panels - 1) * whole.panelLength + fabricForLast),
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

/** What is cut off the bolt less the panels, in (1/320 mm)²: the fabric beside the last panel. */
export function leftoverArea(way: PanelWay): number {
  const lastArea = way.lastPieces * way.lastWidth * way.lastPieceLength;
  return way.fabric.width * (way.fabricLength - (way.panels - 1) * way.panelLength) - lastArea;
}

export interface BackingDetails {
  /** Cut size of the backing, overhang included. */
  readonly width: Length;
  readonly length: Length;
  /** Ways with the ordinary fabric and with the wide one, the shortest first; either may be empty, never both. */
  readonly ways: readonly PanelWay[];
  readonly wideWays: readonly PanelWay[];
}

/**
 * The ways to make this backing: the shortest of the project's own fabric and of wide backing, and the better of the two, which
 * is the own fabric where it goes at all. A way whose last panel is joined from strips counts only where the maker agrees to it.
 */
export function chosenWays(
  { ways, wideWays }: BackingDetails,
  { mayJoinLast }: Pick<BackingInput, 'mayJoinLast'>,
): Readonly<Record<'own' | 'wide' | 'best', PanelWay | undefined>> {
  const shortest = (some: readonly PanelWay[]) => some.find(({ last }) => mayJoinLast || last === 'whole');
  const [own, wide] = [shortest(ways), shortest(wideWays)];
  return { own, wide, best: own ?? wide };
}
