import type { Calculation } from '#core/calculators/calculator';
import { isOutOfDate } from '#core/calculators/complete-input';
import { calculatorByName } from '#core/calculators/registry';
import { calculationOf } from '#core/calculators/saved-answer';
import type { SavedCalculation } from '#core/contract/calculations';
import type { ProjectFabric } from '#core/contract/stash';
import type { Measurements } from '#core/domain/measurements';

/** A saved answer as it is printed. */
export interface PaperAnswer {
  readonly name: string;
  readonly title: string;
  readonly calculation: Calculation;
  readonly isOld: boolean;
}

/** The saved answers of a stage that can be shown; those that are out of date are marked. */
export function paperAnswers(
  saved: readonly SavedCalculation[],
  measurements: Measurements,
): readonly PaperAnswer[] {
  return saved.flatMap((one) => {
    const calculator = calculatorByName(one.calculator);
    const calculation = calculationOf(one.answer);
    if (calculator === undefined || calculation === null) return [];
    return [
      {
        name: calculator.name,
        title: calculator.title,
        calculation,
        isOld: isOutOfDate(one, calculator, measurements),
      },
    ];
  });
}

/** One fabric of a project: the area used, (1/320 mm)², and the pieces set aside with their width. */
export interface FabricLine {
  readonly fabricId: string;
  readonly name: string;
  readonly swatch: string;
  readonly usedArea: number;
  readonly held: readonly { readonly pieceId: string; readonly width: number; readonly length: number }[];
}

/** One line for each fabric of a project, those with something set aside first. Fabric whose cuts were all undone is left out. */
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
