import type { Calculation } from '#core/calculators/calculator';
import { isOutOfDate } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import type { KeptCalculation } from '#core/contract/calculations';
import type { ProjectFabric } from '#core/contract/stash';
import type { Measurements } from '#core/domain/measurements';

/** A kept answer as it goes on paper. */
export interface PaperAnswer {
  readonly name: string;
  readonly title: string;
  readonly calculation: Calculation;
  readonly isOld: boolean;
}

/** The kept answers of a stage that can still be shown, those that no longer fit the project marked. */
export function paperAnswers(
  kept: readonly KeptCalculation[],
  measurements: Measurements,
): readonly PaperAnswer[] {
  return kept.flatMap((one) => {
    const calculator = calculatorByName(one.calculator);
    if (calculator === undefined || !isCalculation(one.answer)) return [];
    return [
      {
        name: calculator.name,
        title: calculator.title,
        calculation: one.answer,
        isOld: isOutOfDate(one, calculator, measurements),
      },
    ];
  });
}

function isCalculation(answer: unknown): answer is Calculation {
  return (
    typeof answer === 'object' &&
    answer !== null &&
    'figures' in answer &&
    Array.isArray(answer.figures) &&
    'notes' in answer &&
    'tables' in answer
  );
}

/** One fabric of a project: how much of it is used up, (1/320 mm)², and how much is set aside of pieces of which width. */
export interface FabricLine {
  readonly fabricId: string;
  readonly name: string;
  readonly swatch: string;
  readonly usedArea: number;
  readonly held: readonly { readonly pieceId: string; readonly width: number; readonly length: number }[];
}

/** The fabric of a project by fabric, those it holds first; what was cut and taken back again is left out. */
export function fabricLines(used: ProjectFabric): readonly FabricLine[] {
  const lines = new Map<string, FabricLine>();
  for (const { piece, fabric, held } of used.held) {
    const before = lines.get(fabric.id);
    lines.set(fabric.id, {
      fabricId: fabric.id,
      name: fabric.name,
      swatch: fabric.swatch,
      usedArea: 0,
      held: [...(before?.held ?? []), { pieceId: piece.id, width: piece.width, length: held }],
    });
  }
  for (const booking of used.bookings) {
    const before = lines.get(booking.fabricId);
    lines.set(booking.fabricId, {
      fabricId: booking.fabricId,
      name: booking.fabricName,
      swatch: booking.swatch,
      usedArea: (before?.usedArea ?? 0) + booking.usedArea,
      held: before?.held ?? [],
    });
  }
  return [...lines.values()].filter(({ usedArea, held }) => usedArea !== 0 || held.length > 0);
}
