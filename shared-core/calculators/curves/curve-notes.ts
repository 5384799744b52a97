import type { LengthQuantity, Note } from '../explanation';
import { coverOf } from '../binding/strip-width';
import { facingPatchSide } from '../edge-finish/facing/work';
import { fineLength, givenLength, lengthUp, percentQuantity, wordsQuantity } from '../quantities';
import { type Length, lengthFromInches } from '#core/units/length';
import { roundDownTo } from '#core/units/rounding';
import {
  type BoundCurve,
  type CurveStrains,
  curveStrains,
  narrowestStrip,
  seamsForStrip,
  strainVerdict,
  turnedStrain,
  widestSeam,
  widestStrip,
} from './strain';
import type { WhatFits } from './strain-steps';

/** A hint how to hold the fold, whatever the percent: bias need not lie flat while it is sewn. */
export function standsUpNote({ sewing }: CurveStrains): Note {
  return {
    kind: 'tip',
    says: 'While you sew, the fold stands up off the quilt. It would have to give {sewing} to lie flat, but it need not: hold it with clips, sew a few stitches at a time and keep the seam straight.',
    values: { sewing: percentQuantity(100 * sewing) },
  };
}

/** What to change if the turned strip gives too much or does not reach, each way with its numbers. Nothing if it goes with care. */
export function changeNotes(what: WhatFits): readonly Note[] {
  const { curve, limits } = what;
  const strains = curveStrains(curve);
  const verdict = strainVerdict(strains, limits);
  if (verdict === 'comfortable' || verdict === 'with care') return [];
  const problem: Note =
    verdict === 'too narrow'
      ? {
          kind: 'warning',
          says: 'With a {seam} seam, this strip ends {short} short of the stitching on the back.',
          values: {
            seam: fineLength(curve.seam, 'nearest'),
            short: fineLength(-coverOf(curve.fold, curve.strip, curve), 'up'),
          },
        }
      : {
          kind: 'warning',
          says: 'Once turned, the strip has to stretch or ease by {strain}: {verdict}.',
          values: {
            strain: percentQuantity(100 * turnedStrain(strains)),
            verdict: wordsQuantity(verdict),
          },
        };
  const ways = [...stripNotes(what), ...seamNotes(what), ...frontNotes(what)];
  return [problem, ...ways, ...(ways.length === 0 ? [NOTHING_GOES] : []), ...faceNotes(curve)];
}

const NOTHING_GOES: Note = {
  kind: 'warning',
  says: 'No strip goes around so tight a curve with care.',
  values: {},
};

/** The finest step of a ruler: a range narrower than this can’t be measured off, so it is no advice. */
const RULER_STEP = lengthFromInches(1 / 64);

/** From memory: a seam narrower than this does not hold a quilted edge. */
const NARROWEST_SEAM = lengthFromInches(1 / 8);

interface StripRange {
  readonly least: LengthQuantity;
  readonly most: LengthQuantity;
}

/** Strips that reach the stitching and go with care with this seam. */
function stripsFor(curve: Omit<BoundCurve, 'strip'>, { limits }: WhatFits): StripRange | null {
  const [narrowest, widest] = [narrowestStrip(curve), widestStrip(curve, limits.hard / 100)];
  if (widest === null || widest - narrowest < RULER_STEP) return null;
  return { least: fineLength(narrowest, 'up'), most: fineLength(widest, 'down') };
}

function stripNotes(what: WhatFits): readonly Note[] {
  const { curve } = what;
  const strips = curve.seam < NARROWEST_SEAM ? null : stripsFor(curve, what);
  if (strips === null) return [];
  return [
    {
      kind: 'tip',
      says: 'With your {seam} seam, a strip from {least} to {most} wide goes.',
      values: { seam: fineLength(curve.seam, 'nearest'), ...strips },
    },
  ];
}

function seamNotes({ curve, limits }: WhatFits): readonly Note[] {
  const seams = seamsForStrip(curve, limits.hard / 100);
  if (seams === null) return [];
  const least = Math.max(seams.least, NARROWEST_SEAM);
  if (seams.most - least < RULER_STEP) return [];
  return [
    {
      kind: 'tip',
      says: 'With your strip, a seam from {least} to {most} goes.',
      values: { least: fineLength(least, 'up'), most: fineLength(seams.most, 'down') },
    },
  ];
}

/** A narrower seam and strip together, where the seam itself gives too much at the edge. */
function frontNotes(what: WhatFits): readonly Note[] {
  const { curve, limits } = what;
  const widest = widestSeam({ ...curve, cover: 0 }, limits.hard / 100);
  const front = roundDownTo(widest, RULER_STEP);
  if (front < NARROWEST_SEAM || front >= curve.seam) return [];
  const narrower = { ...curve, seam: front };
  const double = stripsFor({ ...narrower, fold: 'double' }, what);
  const single = stripsFor({ ...narrower, fold: 'single' }, what);
  if (double === null || single === null) return [];
  return [
    {
      kind: 'tip',
      says: 'A narrower binding goes: a seam of {front} with a strip from {least} to {most} wide in double fold, or from {singleLeast} to {singleMost} in single fold, which is one layer less to bend.',
      values: {
        front: fineLength(front, 'down'),
        ...double,
        singleLeast: single.least,
        singleMost: single.most,
      },
    },
  ];
}

/** Common practice: a facing about 1 1/2 in wide, which is cut to the curve and has to bend nowhere. */
const FACING_WIDTH = lengthFromInches(3 / 2);

function faceNotes({ side, radius, seam }: BoundCurve): readonly Note[] {
  if (side === 'outside') return [];
  const patch = facingPatchSide(radius, { seamAllowance: seam, width: FACING_WIDTH, turnedEdge: seam });
  return [
    {
      kind: 'tip',
      says: 'Or face the edge: a patch {patch} square makes a facing {width} wide that turns to the back and bends nowhere. The question “Facing” has its sizes and steps.',
      values: { patch: lengthUp(patch), width: givenLength(FACING_WIDTH) },
    },
  ];
}

/** Common practice: what a wandering cut does, so long as the seam is sewn to the drawn line. */
export function wanderNote(seam: Length): Note {
  return {
    kind: 'tip',
    says: 'A cut that wanders by less than {seam} is still covered if the seam follows the drawn line.',
    values: { seam: givenLength(seam) },
  };
}

/** Common practice; one teacher gives the strip a slight tug on an inside curve, which takes up fullness at the edge. */
export const INSIDE_HANDLING: Note = {
  kind: 'tip',
  says: 'Inside curve: sew the strip at its natural length or just taut, never pulled hard.',
  values: {},
};

/** Common practice. */
export const OUTSIDE_HANDLING: Note = {
  kind: 'tip',
  says: 'Outside curve: feed the strip in generously and never stretch it.',
  values: {},
};
