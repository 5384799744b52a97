import { failure, type Result, success } from '#core/result';
import { foldReach } from '#core/calculators/binding/strip-width';
import type { Refusal } from '#core/calculators/calculator';
import { givenLength } from '#core/calculators/quantities';
import { limitsFromInputs, straightGrainRefusal } from '../curve-fields';
import {
  type CurveStrains,
  curveStrains,
  seamRadius,
  smallestRadius,
  type StrainVerdict,
  strainVerdict,
  widestStrip,
} from '../strain';
import { type CurveStrainInput, curveOf } from './input';

export interface CurveStrainDetails {
  readonly seamRadius: number;
  /** Along the arc, at the cut edge and at the stitching. */
  readonly edgeLength: number;
  readonly seamLine: number;
  readonly strains: CurveStrains;
  readonly verdict: StrainVerdict;
  /** How far a strip cut to the length of the raw edge would have to stretch (inside) or be eased (outside). */
  readonly cutToEdgeStrain: number;
  /** At the limit above which it is hard; null if this seam gives more at the edge. */
  readonly widestStrip: number | null;
  readonly smallestRadius: number;
}

export function workOutCurveStrain(input: CurveStrainInput): Result<CurveStrainDetails, Refusal> {
  const refusal = refusalOf(input);
  return refusal === null ? success(detailsOf(input)) : failure(refusal);
}

function detailsOf(input: CurveStrainInput): CurveStrainDetails {
  const curve = curveOf(input, input.fold);
  const limits = limitsFromInputs(input);
  const hardLimit = limits.hard / 100;
  const strains = curveStrains(curve);
  const turn = (input.arc * Math.PI) / 180;
  return {
    seamRadius: seamRadius(curve),
    edgeLength: turn * curve.radius,
    seamLine: turn * seamRadius(curve),
    strains,
    verdict: strainVerdict(strains, limits),
    cutToEdgeStrain: curve.seam / curve.radius,
    widestStrip: widestStrip(curve, hardLimit),
    smallestRadius: smallestRadius(curve, hardLimit),
  };
}

function refusalOf(input: CurveStrainInput): Refusal | null {
  const { side, radius, seamAllowance: seam, stripWidth: strip } = input;
  if (side === 'outside' && radius <= seam) {
    return {
      code: 'bend-too-tight',
      field: ['radius'],
      says: 'A {seam} seam is too wide for an outside curve with a radius of {radius}.',
      values: { seam: givenLength(seam), radius: givenLength(radius) },
    };
  }
  if (foldReach(input.fold, strip, seam) > 0) return straightGrainRefusal(input.grain);
  return {
    code: 'strip-too-narrow',
    field: ['stripWidth'],
    says: 'A {strip} strip is too narrow for a {seam} seam: nothing is left to fold over.',
    values: { strip: givenLength(strip), seam: givenLength(seam) },
  };
}
