import { lengthSubtract } from '#core/units/length';
import { cautionNotes } from '../caution-notes';
import type { Note } from '../explanation';
import { countQuantity, givenLength, lengthDown } from '../quantities';
import { holeSeams } from './hole-table';
import type { BackingInput } from './input';
import type { BackingDetails, PanelWay } from './work';

/** Joining more strips than this is more sewing than the fabric is worth, and no quilter wants the seams. */
const MOST_STRIPS_TO_ADVISE = 2;

export function backingNotes(input: BackingInput, details: BackingDetails, best: PanelWay): readonly Note[] {
  return [
    ...cautionNotes('rotaryBlade', 'iron'),
    ...(best.panels > 1 ? panelNotes(input) : []),
    ...holeNotes(input, details, best),
    ...(best.panels > 1 ? savingNotes(details.ways[0], best) : []),
    ...(best.last === 'across' ? [SIDEWAYS] : []),
  ];
}

const SIDEWAYS: Note = {
  kind: 'warning',
  says: 'The strips of the last panel run crosswise, so a one-way print is sideways there.',
  values: {},
};

const ASK_YOUR_QUILTER: Note = {
  kind: 'tip',
  says: 'Ask your quilter which way the seam should run; most want it parallel to the rollers, few seams, and the backing squared.',
  values: {},
};

function panelNotes({ seam, printRepeat }: BackingInput): readonly Note[] {
  const trim: Note = {
    kind: 'tip',
    says: 'Cut the selvages off before you join the panels: they shrink more in the wash. Sew with a seam allowance of {seam} and press the seams open.',
    values: { seam: givenLength(seam) },
  };
  const match: Note = {
    kind: 'tip',
    says: 'Cut every panel at the same place of the print. Buy one repeat of {repeat} more if the print has to start at a certain place.',
    values: { repeat: givenLength(printRepeat) },
  };
  return [trim, ASK_YOUR_QUILTER, ...(printRepeat === 0 ? [] : [match])];
}

/** What the nearest seam does to the hole, and to the slit. */
function holeNotes(input: BackingInput, details: BackingDetails, best: PanelWay): readonly Note[] {
  const seams = holeSeams(input, details, best);
  const [nearest] = seams.toSorted((one, other) => one.clear - other.clear);
  if (nearest === undefined) return [];
  const isNear = nearest.clear < input.holeClearance;
  const isAlongSlit = input.hasSlit && best.panelsRun === 'up' && nearest.fromMiddle < input.holeClearance;
  return [
    ...(isNear ? [nearNote(input, nearest)] : []),
    ...(isAlongSlit ? [alongSlitNote(nearest.fromMiddle)] : []),
    ...seams.flatMap(({ onSlit }) => (onSlit === null ? [] : [onSlitNote(onSlit)])),
    ...(isNear ? clearerNotes(input, best) : []),
  ];
}

function nearNote(
  { holeClearance }: BackingInput,
  { clear, fromMiddle }: { clear: number; fromMiddle: number },
): Note {
  if (clear < 0) {
    return {
      kind: 'warning',
      says: 'A seam of the backing crosses the hole, {away} from its middle. The binding goes over that seam twice.',
      values: { away: lengthDown(fromMiddle) },
    };
  }
  return {
    kind: 'warning',
    says: 'A seam of the backing runs {clear} from the edge of the hole. You asked for {wanted}.',
    values: { clear: lengthDown(clear), wanted: givenLength(holeClearance) },
  };
}

function alongSlitNote(away: number): Note {
  return {
    kind: 'warning',
    says: 'A seam of the backing runs along the slit, {away} from it. Turn the backing so that the seams run crosswise, or have no seam down the middle.',
    values: { away: lengthDown(away) },
  };
}

function onSlitNote(fromEdge: number): Note {
  return {
    kind: 'tip',
    says: 'A seam of the backing crosses the slit {away} from the outer edge, where the slit is cut straight down.',
    values: { away: lengthDown(fromEdge) },
  };
}

/** Half a panel on each side of the middle is all the room that no seam down the middle gives. */
function clearerNotes(
  { hole, holeClearance, noMiddleSeam }: BackingInput,
  { fabric }: PanelWay,
): readonly Note[] {
  if (hole === null || noMiddleSeam) return [];
  const clear = (fabric.width - 2 * fabric.seam - hole.diameter) / 2;
  if (clear < holeClearance) return [];
  return [
    {
      kind: 'tip',
      says: 'With no seam down the middle, the nearest seam stays {clear} from the hole.',
      values: { clear: lengthDown(clear) },
    },
  ];
}

/** What joining the last panel from a few strips would save, when the maker has not asked for it. */
function savingNotes(shortest: PanelWay | undefined, best: PanelWay): readonly Note[] {
  if (shortest?.fabric.width !== best.fabric.width || shortest.fabricLength === best.fabricLength) return [];
  if (shortest.lastStrips > MOST_STRIPS_TO_ADVISE) return [];
  return [
    {
      kind: 'tip',
      says: 'Joining the last panel from {strips} saves {less} of fabric.',
      values: {
        strips: countQuantity(shortest.lastStrips, ['strip', 'strips']),
        less: givenLength(lengthSubtract(best.fabricLength, shortest.fabricLength)),
      },
    },
  ];
}
