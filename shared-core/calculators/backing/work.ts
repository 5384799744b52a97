import { type Length, lengthAdd, lengthFromExact, lengthMinimum, lengthTimes } from '#core/units/length';
import type { BackingInput } from './input';

/** What a backing is cut from, in 1/320 mm. */
interface PanelFabric {
  readonly width: Length;
  readonly seam: Length;
  /** Cut sizes are rounded up to a multiple of this. */
  readonly cutStep: Length;
}

/**
 * How to make the last panel when less than a full width is needed. whole: cut from selvage to selvage and trimmed. along: strips
 * cut along the fabric and joined end to end, the print upright. across: strips cut across the fabric and joined. outer: two outer
 * panels of the same width instead of one last panel, so that a whole panel lies in the middle.
 */
type LastPanel = 'whole' | 'along' | 'across' | 'outer';

/** One way to make a backing. Lengths in 1/320 mm. */
export interface PanelWay {
  readonly fabric: PanelFabric;
  /** up: lengthwise seams, from bottom to top of the quilt. across: crosswise seams. */
  readonly panelsRun: 'up' | 'across';
  readonly panels: number;
  /** Cut length of a panel: whole repeats where a print is matched. */
  readonly panelLength: Length;
  readonly last: LastPanel;
  /** Cut width of the last panel, rounded up; the excess is trimmed. */
  readonly lastWidth: Length;
  /** Strips the last panel is joined from; 1 when it is whole, 2 for two outer panels. */
  readonly lastStrips: number;
  /** Cut length of each of these strips; the last one is trimmed. */
  readonly lastStripLength: Length;
  /** Length of fabric to cut from, before any extra. */
  readonly fabricLength: Length;
  /** All seams, with the joins within the last panel. */
  readonly seamLength: Length;
}

/** More panels than this are a slip in the input, not a backing. */
export const MOST_PANELS = 30;

type Wishes = Pick<BackingInput, 'printRuns' | 'noMiddleSeam' | 'printRepeat'>;

/**
 * Every way to make a backing of `width` by `length` from fabric of this width: shortest fabric first, then least to sew. Empty
 * when the seam allowances use up the fabric or too many panels are needed.
 */
export function panelWays(
  backing: { readonly width: Length; readonly length: Length },
  fabric: PanelFabric,
  wishes: Wishes,
): readonly PanelWay[] {
  const { width, length } = backing;
  const up: Covering = { span: width, panelLength: matchedLength(length, wishes), panelsRun: 'up' };
  const across: Covering = { span: length, panelLength: matchedLength(width, wishes), panelsRun: 'across' };
  const coverings = [
    ...(wishes.printRuns === 'across-the-fabric' ? [] : [up]),
    ...(wishes.printRuns === 'up-the-fabric' ? [] : [across]),
  ];
  return coverings
    .flatMap((covering) => waysToCover(covering, fabric, wishes))
    .sort((one, other) => one.fabricLength - other.fabricLength || one.seamLength - other.seamLength);
}

/** A panel starts at the same place of the print as the one before, so each takes whole repeats. 0 matches nothing. */
function matchedLength(length: Length, { printRepeat }: Wishes): Length {
  return printRepeat === 0 ? length : lengthFromExact(length, 'up', printRepeat);
}

type Covering = Pick<PanelWay, 'panelLength' | 'panelsRun'> & { readonly span: Length };

/** Joined strips do not keep a print matched, and bring back seams in the middle, so they are left out where either is wished. */
function waysToCover(covering: Covering, fabric: PanelFabric, wishes: Wishes): readonly PanelWay[] {
  const { span, panelLength, panelsRun } = covering;
  const panels = widthsToReach(span, fabric.width, fabric.seam);
  if (panels === null) return [];
  const joins = panels - 1;
  if (joins > 0 && wishes.noMiddleSeam) return outerPanels(covering, fabric);
  const lastNeed = span - joins * (fabric.width - 2 * fabric.seam);
  const lastWidth = lengthMinimum(fabric.width, lengthFromExact(lastNeed, 'up', fabric.cutStep));
  const whole: PanelWay = {
    fabric,
    panelsRun,
    panels,
    panelLength,
    lastWidth,
    last: 'whole',
    lastStrips: 1,
    lastStripLength: panelLength,
    fabricLength: lengthTimes(panelLength, panels),
    seamLength: lengthTimes(panelLength, joins),
  };
  if (joins === 0 || wishes.printRepeat > 0) return [whole];
  const joined = [stripsAlong(whole), wishes.printRuns === 'any-way' ? stripsAcross(whole) : null];
  return [whole, ...joined.filter((way) => way !== null)];
}

/**
 * The fewest whole panels, an odd number so that one lies in the middle, with an equal panel at each side. Both outer panels come
 * from one length of fabric where its width holds them.
 */
function outerPanels({ span, panelLength, panelsRun }: Covering, fabric: PanelFabric): readonly PanelWay[] {
  for (let whole = 1; whole + 2 <= MOST_PANELS; whole += 2) {
    const need = outerPanelWidth(span, whole, fabric);
    if (need > fabric.width) continue;
    const lastWidth = lengthMinimum(fabric.width, lengthFromExact(need, 'up', fabric.cutStep));
    const lengths = whole + (2 * lastWidth <= fabric.width ? 1 : 2);
    const way: PanelWay = {
      fabric,
      panelsRun,
      panels: whole + 2,
      panelLength,
      last: 'outer',
      lastWidth,
      lastStrips: 2,
      lastStripLength: panelLength,
      fabricLength: lengthTimes(panelLength, lengths),
      seamLength: lengthTimes(panelLength, whole + 1),
    };
    return [way];
  }
  return [];
}

/** What each outer panel must be wide beside `whole` whole ones, in 1/320 mm before rounding. */
export function outerPanelWidth(span: number, whole: number, { width, seam }: PanelFabric): number {
  return (span - whole * width + 2 * (whole + 1) * seam) / 2;
}

/** Panels of the full fabric width, without the last one or the two outer ones. */
export function wholePanels({ panels, last }: PanelWay): number {
  return panels - (last === 'outer' ? 2 : 1);
}

/** As many strips side by side as the fabric width holds, joined end to end. */
function stripsAlong(whole: PanelWay): PanelWay | null {
  const { fabric, lastWidth, panelLength } = whole;
  const strips = (fabric.width - (fabric.width % lastWidth)) / lastWidth;
  const joined = panelLength + (strips - 1) * 2 * fabric.seam;
  const stripLength = lengthFromExact(joined / strips, 'up', fabric.cutStep);
  return withJoinedLast(whole, { last: 'along', strips, stripLength, fabricForLast: stripLength });
}

/** Strips from selvage to selvage, joined end to end. A one-way print on them ends up sideways. */
function stripsAcross(whole: PanelWay): PanelWay | null {
  const { fabric, lastWidth, panelLength } = whole;
  const strips = widthsToReach(panelLength, fabric.width, fabric.seam);
  if (strips === null) return null;
  const fabricForLast = lengthTimes(lastWidth, strips);
  return withJoinedLast(whole, { last: 'across', strips, stripLength: fabric.width, fabricForLast });
}

/** Null when it saves no fabric. */
function withJoinedLast(
  whole: PanelWay,
  joined: {
    readonly last: LastPanel;
    readonly strips: number;
    readonly stripLength: Length;
    readonly fabricForLast: Length;
  },
): PanelWay | null {
  const { last, strips, stripLength, fabricForLast } = joined;
  if (fabricForLast >= whole.panelLength) return null;
  return {
    ...whole,
    last,
    lastStrips: strips,
    lastStripLength: stripLength,
    fabricLength: lengthAdd(lengthTimes(whole.panelLength, whole.panels - 1), fabricForLast),
    seamLength: lengthAdd(whole.seamLength, lengthTimes(whole.lastWidth, strips - 1)),
  };
}

/** Fewest widths of `size`, joined with `seam` on each, that reach `span`; null when more than the most would be needed. */
function widthsToReach(span: number, size: number, seam: number): number | null {
  if (size >= span) return 1;
  const gain = size - 2 * seam;
  if (gain <= 0) return null;
  const rest = (span - 2 * seam) % gain;
  const widths = (span - 2 * seam - rest) / gain + (rest > 0 ? 1 : 0);
  return widths <= MOST_PANELS ? widths : null;
}

/** Fabric left beside the last panel, in (1/320 mm)². */
export function leftoverArea(way: PanelWay): number {
  const lastArea = way.lastStrips * way.lastWidth * way.lastStripLength;
  return way.fabric.width * (way.fabricLength - wholePanels(way) * way.panelLength) - lastArea;
}

export interface BackingDetails {
  /** Cut size of the backing, overhang included. */
  readonly width: Length;
  readonly length: Length;
  /** Ways with ordinary fabric and with wide backing, the shortest first. Either may be empty. */
  readonly ways: readonly PanelWay[];
  readonly wideWays: readonly PanelWay[];
}

/**
 * The way to use of ordinary fabric and of wide backing: the shortest whose last panel is whole, or the shortest of all when the
 * maker is willing to join the last panel. `best` is ordinary fabric when it works at all.
 */
export function chosenWays(
  { ways, wideWays }: BackingDetails,
  { mayJoinLast }: Pick<BackingInput, 'mayJoinLast'>,
): Readonly<Record<'own' | 'wide' | 'best', PanelWay | undefined>> {
  const shortest = (some: readonly PanelWay[]) =>
    some.find(({ last }) => mayJoinLast || last === 'whole' || last === 'outer');
  const [own, wide] = [shortest(ways), shortest(wideWays)];
  return { own, wide, best: own ?? wide };
}
