import type { Note } from '#core/calculators/explanation';
import { countQuantity, givenLength, lengthDown, lengthUp } from '#core/calculators/quantities';
import type { OnePatch } from './input';
import type { PatchClearance, SeamsClearance } from './work';

/** What to do about the seams of the patch, if the hole comes near them. */
export function patchNotes(asked: OnePatch, details: PatchClearance): readonly Note[] {
  const { clearanceAtSeam, worstClearance, clearanceAtBack } = details;
  if (clearanceAtSeam < 0) return [outsideNote(details)];
  if (worstClearance < 0) {
    return [
      {
        kind: 'warning',
        says: 'Only {left} is left. If the center is off by {off}, the stitching is on a seam.',
        values: { left: lengthDown(clearanceAtSeam), off: givenLength(asked.accuracy) },
      },
    ];
  }
  if (clearanceAtBack >= 0) return [];
  return [
    {
      kind: 'tip',
      says: 'On the back, the fold covers a seam of the patch. It will be thicker there.',
      values: {},
    },
  ];
}

/** Crossing seams is how most rings are made. It needs stay-stitching, not another hole. */
function outsideNote({ clearanceAtSeam, seamsCrossed }: PatchClearance): Note {
  const out = lengthUp(-clearanceAtSeam);
  if (seamsCrossed === 0) {
    return {
      kind: 'warning',
      says: 'The stitching runs outside the center patch, as far as {out} from it, and does not cross its seams. Look for the seams of the patches it runs over.',
      values: { out },
    };
  }
  return {
    kind: 'tip',
    says: 'The stitching leaves the center patch by {out} and crosses {seams}. Stay-stitch first so that the seams do not open, and keep the join of the binding strip off a seam. If the patch holds a motif that should stay whole, make the hole smaller.',
    values: { out, seams: countQuantity(seamsCrossed, ['seam', 'seams']) },
  };
}

export function seamNotes({ seamsCrossed, betweenSeams }: SeamsClearance): readonly Note[] {
  return [
    {
      kind: 'tip',
      says: 'The line crosses {seams}. Stay-stitch first so that they do not open, and let no seam fall on the join of the binding strip.',
      values: { seams: countQuantity(seamsCrossed, ['seam', 'seams']) },
    },
    {
      kind: 'tip',
      says: 'Put the join halfway between two seams: {away} from each along the stitching. Trim what lies thick in the seam allowances there before you bind.',
      values: { away: lengthDown(betweenSeams / 2) },
    },
  ];
}
