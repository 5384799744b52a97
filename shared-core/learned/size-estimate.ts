import { outlineArea } from '#core/calculators/outline/outline-inset';
import { outlinePerimeter, outlineSlit } from '#core/calculators/outline/outline-measures';
import type { Measurements } from '#core/domain/measurements';
import { type StageKind, stageKindRecord } from '#core/domain/stage-kinds';
import { lengthFromInches } from '#core/units/length';
import { roundUpTo } from '#core/units/rounding';

/** What hours depend on: the shape of a project. */
export type Piece = Pick<Measurements, 'outline' | 'hole' | 'hasSlit'>;

/** The piece that the hours of the starting plans are for: a round skirt of 48 in with a slit to a hole of 6 in. */
export const TYPICAL_PIECE: Piece = {
  outline: { shape: 'circle', diameter: lengthFromInches(48) },
  hole: { diameter: lengthFromInches(6) },
  hasSlit: true,
};

interface Estimated {
  readonly kind: StageKind;
  readonly estimateMinutes: number;
}

/**
 * The minutes of a stage for a piece of another size, up to 5 minutes and never less than 15: piecing and quilting grow with the area,
 * binding with the edge it goes around. Other stages take the same time. Common practice; the maker's own clock corrects it.
 */
export function minutesForSize({ kind, estimateMinutes }: Estimated, from: Piece, to: Piece): number {
  const [was, is] = [amountOf(kind, from), amountOf(kind, to)];
  if (was === is || was === 0 || is === 0 || estimateMinutes === 0) return estimateMinutes;
  return Math.max(15, roundUpTo((estimateMinutes * is) / was, 5));
}

/** The stages of a starting plan with the hours for this piece. */
export function stagesForSize<S extends Estimated>(stages: readonly S[], piece: Piece): readonly S[] {
  return stages.map((stage) => ({ ...stage, estimateMinutes: minutesForSize(stage, TYPICAL_PIECE, piece) }));
}

/** In 1/320 mm, or square 1/320 mm for an area; 0 for a stage whose hours do not depend on the size. */
function amountOf(kind: StageKind, { outline, hole, hasSlit }: Piece): number {
  const { growsWith } = stageKindRecord(kind);
  if (growsWith === null) return 0;
  if (growsWith === 'area') return outlineArea(outline);
  const edge = outlinePerimeter(outline);
  const around = hole === null ? 0 : Math.PI * hole.diameter + (hasSlit ? 2 * outlineSlit(outline, hole) : 0);
  switch (growsWith) {
    case 'edge':
      return edge;
    case 'hole':
      return around;
    case 'every-edge':
      return edge + around;
  }
}
