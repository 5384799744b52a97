import { z } from 'zod';
import type { CalculationId, StageId } from '#core/domain/ids';
import { calculationIdSchema, stageIdSchema } from '#core/domain/ids';
import { reads, writes } from './channel';
import type { Changed } from './projects';

/**
 * A saved answer of a stage: its calculator and that one's version, the whole input, the part of the input that the maker set (the rest came
 * from the project), and the answer. Whether it is out of date is worked out when it is shown, by reading the project's input again.
 */
export interface SavedCalculation {
  readonly id: CalculationId;
  readonly stageId: StageId;
  readonly calculator: string;
  readonly version: number;
  readonly input: unknown;
  readonly ownInput: unknown;
  readonly answer: unknown;
  readonly savedAt: number;
}

const json = z.unknown();

export const calculationChannels = {
  'calculation:list': reads<readonly SavedCalculation[]>()(z.object({ stageId: stageIdSchema })),
  /** Saves the answer of a calculator with a stage, in place of an earlier one. The store works the answer out itself. */
  'calculation:save': writes<Changed & { readonly calculationId: CalculationId }>()(
    z.object({ stageId: stageIdSchema, calculator: z.string().max(80), ownInput: json }),
  ),
  /** Takes the project's facts into a saved answer. One that decides a fact the project has otherwise is deleted. */
  'calculation:follow-project': writes<Changed>()(z.object({ calculationId: calculationIdSchema })),
  'calculation:delete': writes<Changed>()(z.object({ calculationId: calculationIdSchema })),
};
