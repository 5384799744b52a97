import { success } from '#core/result';
import type { Calculator } from '#core/calculators/calculator';
import type { Figure } from '#core/calculators/explanation';
import { fineLength, lengthNearest, wordsQuantity } from '#core/calculators/quantities';
import type { Length } from '#core/units/length';
import { centerFindDiagram } from './diagram';
import { findCenter } from './find';
import { apartOf, type Found } from './found';
import { type CenterFindInput, centerFindFromProject, centerFindInput } from './input';
import { centerFindNotes } from './notes';
import { centerFindSteps } from './steps';
import { arcsTable, centersTables, fitTable } from './tables';

export const centerFind: Calculator<CenterFindInput, Found> = {
  name: 'center-find',
  version: 4,
  title: 'Find the center',
  question: 'Where is the center of a finished piece?',
  stageKinds: ['center-cut'],
  input: centerFindInput,
  fromProject: centerFindFromProject,
  calculate(input) {
    const found = findCenter(input);
    if (!found.ok) return found;
    const details = found.value;
    return success({
      figures: figuresOf(details, input.accuracy),
      tables: [arcsTable(details), ...centersTables(details), ...details.tables, fitTable(details)],
      explanation: centerFindSteps(details),
      notes: centerFindNotes(details, input.accuracy),
      diagram: centerFindDiagram(details),
      details,
    });
  },
};

/** Two arcs cross at the center; the third shows whether they were chalked right. */
const ARCS_SHOWN = 3;

function figuresOf(found: Found, accuracy: Length): readonly Figure[] {
  return [
    ...found.arcs.slice(0, ARCS_SHOWN).map(({ from, distance }) => ({
      label: `Chalk an arc from ${from} at`,
      quantity: lengthNearest(distance),
    })),
    closureFigure(found, accuracy),
    ...(found.centers.length > 1
      ? [{ label: 'The methods differ by', quantity: fineLength(apartOf(found), 'nearest') }]
      : []),
    ...found.figures,
  ];
}

/** As a share of the accuracy: finer than a tape can show, so that lengths that disagree by less agree. */
const AGREES = 1 / 8;

function closureFigure({ closure }: Found, accuracy: Length): Figure {
  const { error } = closure;
  return error === null || error < AGREES * accuracy
    ? { label: 'Your lengths', quantity: wordsQuantity('They fit together.') }
    : { label: 'One length alone would have to change by', quantity: fineLength(error, 'nearest') };
}
