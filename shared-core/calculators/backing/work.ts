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
 * cut along the fabric and joined end to end, the print upright. across: strips cut across the fabric and joined.
 */
type LastPanel = 'whole' | 'along' | 'across';

/** One way to make a backing. Lengths in 1/320 mm. */
export interface PanelWay {
  readonly fabric: PanelFabric;
  /** up: lengthwise seams, from bottom to top of the quilt. across: crosswise seams. */
  readonly panelsRun: 'up' | 'across';
  readonly panels: number;
  readonly panelLength: Length;
  readonly last: LastPanel;
  /** Cut width of the last panel, rounded up; the excess is trimmed. */
  readonly lastWidth: Length;
  /** Strips the last panel is joined from; 1 when it is whole. */
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

/**
 * Every way to make a backing of `width` by `length` from fabric of this width: shortest fabric first, then least to sew. Empty
 * when the seam allowances use up the fabric or too many panels are needed.
 */
export function panelWays(
  backing: { readonly width: Length; readonly length: Length },
  fabric: PanelFabric,
  printRuns: BackingInput['printRuns'],
): readonly PanelWay[] {
  const up =
    printRuns === 'across-the-fabric'
      ? []
      : waysToCover({ span: backing.width, panelLength: backing.length, panelsRun: 'up' }, fabric, printRuns);
  const across =
    printRuns === 'up-the-fabric'
      ? []
      : waysToCover(
          { span: backing.length, panelLength: backing.width, panelsRun: 'across' },
          fabric,
          printRuns,
        );
  return [...up, ...across].sort(
    (one, other) => one.fabricLength - other.fabricLength || one.seamLength - other.seamLength,
  );
}

function waysToCover(
  { span, panelLength, panelsRun }: Pick<PanelWay, 'panelLength' | 'panelsRun'> & { readonly span: Length },
  fabric: PanelFabric,
  printRuns: BackingInput['printRuns'],
): readonly PanelWay[] {
  const panels = widthsToReach(span, fabric.width, fabric.seam);
  if (panels === null) return [];
  const joins = panels - 1;
  const lastNeed = span - joins * (fabric.width - 2 * fabric.seam);
  const lastWidth = lengthMinimum(fabric.width, lengthFromExact(lastNeed, 'up', fabric.cutStep));
  const common = { fabric, panelsRun, panels, panelLength, lastWidth };
  const whole: PanelWay = {
    ...common,
    last: 'whole',
    lastStrips: 1,
    lastStripLength: panelLength,
    fabricLength: lengthTimes(panelLength, panels),
    seamLength: lengthTimes(panelLength, joins),
  };
  if (joins === 0) return [whole];
  const joined = [stripsAlong(whole), printRuns === 'any-way' ? stripsAcross(whole) : null];
  return [whole, ...joined.filter((way) => way !== null)];
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
  return way.fabric.width * (way.fabricLength - (way.panels - 1) * way.panelLength) - lastArea;
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
  const shortest = (some: readonly PanelWay[]) => some.find(({ last }) => mayJoinLast || last === 'whole');
  const [own, wide] = [shortest(ways), shortest(wideWays)];
  return { own, wide, best: own ?? wide };
}
