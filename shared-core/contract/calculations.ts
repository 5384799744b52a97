import { z } from 'zod';
import type { CalculationId, StageId } from '#core/domain/ids';
import { calculationId, stageId } from '#core/domain/ids';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/**
 * An answer kept with a stage: which calculator of which version, the whole input it was made from, what of that input the
 * maker set herself (the rest came from the project), and the answer. Whether it is out of date is worked out when it is
 * shown, by asking for the project's input again.
 */
export interface KeptCalculation {
  readonly id: CalculationId;
  readonly stageId: StageId;
  readonly calculator: string;
  readonly version: number;
  readonly input: unknown;
  readonly ownInput: unknown;
  readonly answer: unknown;
  readonly keptAt: number;
}

const json = z.unknown();

export const calculationChannels = {
  'calculation:list': reads<readonly KeptCalculation[]>()(z.object({ stageId })),
  /** Keeps the answer of one calculator for one stage, in place of the one kept before. The answer is worked out on the main side. */
  'calculation:keep': writes<Changed & { readonly calculationId: CalculationId }>()(
    z.object({ stageId, calculator: z.string().max(80), ownInput: json }),
  ),
  'calculation:remove': writes<Changed>()(z.object({ calculationId })),
};
