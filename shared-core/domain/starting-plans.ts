import { stagePlanIdSchema } from './ids';
import type { z } from 'zod';
import type { PlanPiece, PlanSize } from './fitting-plans';
import type { PlannedStage } from './stage';
import {
  BIND_DRAWN_LINES,
  BIND_IN_ONE,
  CENTER_CUT,
  CUT_AFTER_BINDING,
  CUT_BEFORE_BINDING,
  HAND_FINISH,
  HOME_QUILTING,
  INNER_BINDING,
  LONGARM,
  OUTER_BINDING,
  PIECING,
  RING_LONGARM,
  SLIT_PIECING,
} from './starting-stages';

export interface StartingPlan {
  readonly id: z.infer<typeof stagePlanIdSchema>;
  readonly name: string;
  readonly says: string;
  readonly piece: PlanPiece;
  /** Of the plans that fit a project, the one for its size is chosen first; null: any size. */
  readonly size: PlanSize | null;
  readonly stages: readonly PlannedStage[];
}

/**
 * The stage plans of a new notebook, the usual one for each piece first. Their ids never change: projects are started from them by id.
 * An id that is missing in the row belonged to a plan that is no longer offered.
 */
export const STARTING_PLANS: readonly StartingPlan[] = [
  {
    id: stagePlanIdSchema.parse('5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a01'),
    name: 'Tree skirt',
    says: 'Quilted, trimmed and cut open from the edge to a hole in the center. Then one binding goes around the edge, the slit and the hole. Keep it clear of hot lights and open flame.',
    piece: 'slit-ring',
    size: null,
    stages: [SLIT_PIECING, RING_LONGARM, CUT_BEFORE_BINDING, BIND_IN_ONE, HAND_FINISH],
  },
  {
    id: stagePlanIdSchema.parse('5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a07'),
    name: 'Tree skirt, bound before the cut',
    says: 'The binding is sewn to the drawn lines of hole and slit, and the cut comes after. No loose cut edge stretches. Keep it clear of hot lights and open flame.',
    piece: 'slit-ring',
    size: null,
    stages: [SLIT_PIECING, RING_LONGARM, BIND_DRAWN_LINES, CUT_AFTER_BINDING, OUTER_BINDING, HAND_FINISH],
  },
  {
    id: stagePlanIdSchema.parse('5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a08'),
    name: 'Tree skirt, closed ring',
    says: 'No slit: it goes on over the trunk or the stand, so the hole has to pass the widest part. Keep it clear of hot lights and open flame.',
    piece: 'ring',
    size: null,
    stages: [PIECING, RING_LONGARM, OUTER_BINDING, CENTER_CUT, INNER_BINDING, HAND_FINISH],
  },
  {
    id: stagePlanIdSchema.parse('5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a02'),
    name: 'Table topper with a hole',
    says: 'A closed ring, for a table with an umbrella pole or a candle in the middle. Only with the flame in a tall glass, the fabric well clear, and never left alone.',
    piece: 'ring',
    size: null,
    stages: [PIECING, RING_LONGARM, OUTER_BINDING, CENTER_CUT, INNER_BINDING, HAND_FINISH],
  },
  {
    id: stagePlanIdSchema.parse('5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a03'),
    name: 'Runner',
    says: 'Long and narrow, quilted at home.',
    piece: 'whole',
    size: 'long',
    stages: [PIECING, HOME_QUILTING, OUTER_BINDING, HAND_FINISH],
  },
  {
    id: stagePlanIdSchema.parse('5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a04'),
    name: 'Throw',
    says: 'Large enough to send out for quilting.',
    piece: 'whole',
    size: 'large',
    stages: [PIECING, LONGARM, OUTER_BINDING, HAND_FINISH],
  },
  {
    id: stagePlanIdSchema.parse('5f0e3f5a-6b6e-4a53-9d0c-0c5d4a8e1a05'),
    name: 'Small mat',
    says: 'Pieced, quilted and bound at home in a few evenings.',
    piece: 'whole',
    size: 'small',
    stages: [PIECING, HOME_QUILTING, OUTER_BINDING, HAND_FINISH],
  },
];
