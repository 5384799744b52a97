import { failure, type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Note } from '../explanation';
import { givenLength } from '../quantities';
import { type FabricWidthInput, fabricWidthInput, fabricWidthInputFromProject } from './input';
import { widthSteps } from './steps';
import { bought, type FabricWidthDetails, workOutWidth } from './work';

/**
 * How much fabric of another width replaces a length of one width. It names no fabric, and the answers of the stage ask for theirs
 * already, so it puts nothing on the shopping list.
 */
export const fabricWidth: Calculator<FabricWidthInput, FabricWidthDetails> = {
  name: 'fabric-width',
  version: 2,
  title: 'Another fabric width',
  question: 'How much do I need of a fabric that is wider or narrower than the pattern asks for?',
  stageKinds: ['piecing', 'longarm', 'outer-binding'],
  input: fabricWidthInput,
  fromProject: fabricWidthInputFromProject,
  calculate: calculateFabricWidth,
};

function calculateFabricWidth(input: FabricWidthInput): Result<Calculation<FabricWidthDetails>, Refusal> {
  const work = workOutWidth(input);
  if (work === null) return failure(refuseNarrow(input));
  const { byChart, byArea, exact } = work;
  const toBuy = bought(input, exact);
  return success({
    figures: [
      { label: 'Fabric to buy', quantity: toBuy },
      ...(byChart === null
        ? []
        : [{ label: 'A published chart for garments says', quantity: bought(input, byChart) }]),
    ],
    tables: [],
    explanation: widthSteps(input, work),
    notes: widthNotes(byChart),
    diagram: null,
    details: { byChart, byArea, toBuy: toBuy.rounded },
  });
}

function refuseNarrow({ length, fromWidth, toWidth }: FabricWidthInput): Refusal {
  return {
    code: 'too-long',
    field: ['toWidth'],
    says: '{length} of fabric {from} wide would take more than 1 km of fabric {to} wide.',
    values: {
      length: givenLength(length, 'yardage'),
      from: givenLength(fromWidth),
      to: givenLength(toWidth),
    },
  };
}

function widthNotes(byChart: number | null): readonly Note[] {
  const fit: Note = {
    kind: 'warning',
    says: 'Check that the widest pattern piece fits the narrower fabric. Extra length does not make up for that.',
    values: {},
  };
  const compared: Note = {
    kind: 'tip',
    says: 'The chart is for garments and may give less area than the pattern asks for. Buy by area, and lay out the patches first.',
    values: {},
  };
  return byChart === null ? [fit] : [fit, compared];
}
