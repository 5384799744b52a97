import { failure, type Result, success } from '#core/result';
import { lengthSubtract } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Table } from '../explanation';
import { areaQuantity, countQuantity, givenLength, sizeQuantity, wordsQuantity } from '../quantities';
import { backingDiagram } from './diagram';
import { backingCuts, backingNeeds } from './fabric';
import { backingSize, backingSteps, fabricToBuy } from './steps';
import { holeTables } from './hole-table';
import { backingNotes } from './notes';
import { type BackingInput, backingInput, backingInputFromProject } from './input';
import { type BackingDetails, leftoverArea, MOST_PANELS, type PanelWay, panelWays, chosenWays } from './work';

/** Every way to piece the backing from ordinary fabric and from wide backing, and the fabric each one takes. */
export const backing: Calculator<BackingInput, BackingDetails> = {
  name: 'backing',
  version: 2,
  title: 'Backing',
  question: 'How much fabric does the backing take, and how is it pieced?',
  stageKinds: ['longarm', 'home-quilting'],
  input: backingInput,
  fromProject: backingInputFromProject,
  calculate: calculateBacking,
  needs: backingNeeds,
  cuts: backingCuts,
  isCutLater: true,
};

interface ChosenWays {
  readonly own: PanelWay | undefined;
  readonly wide: PanelWay | undefined;
  readonly best: PanelWay;
}

function calculateBacking(input: BackingInput): Result<Calculation<BackingDetails>, Refusal> {
  const cut = backingSize(input);
  const size = { width: cut.width.rounded, length: cut.length.rounded };
  const { seam, cutStep } = input;
  const details: BackingDetails = {
    ...size,
    ways: panelWays(size, { width: input.fabricWidth, seam, cutStep }, input),
    wideWays: panelWays(size, { width: input.wideWidth, seam, cutStep }, input),
  };
  const { own, wide, best } = chosenWays(details, input);
  if (best === undefined) return failure(refuseNarrowFabric(input));
  return success({
    figures: backingFigures(input, { own, wide, best }),
    tables: [waysTable(input, details), ...holeTables(input, details, best)],
    explanation: backingSteps(input, best),
    notes: backingNotes(input, details, best),
    diagram: backingDiagram(input, details, best),
    details,
  });
}

function refuseNarrowFabric({ fabricWidth, seam }: BackingInput): Refusal {
  return {
    code: 'too-many-panels',
    field: ['fabricWidth'],
    says: 'Fabric {fabricWidth} wide with seam allowances of {seam} would take more than {most}. Use wider fabric or a narrower seam.',
    values: {
      fabricWidth: givenLength(fabricWidth),
      seam: givenLength(seam),
      most: countQuantity(MOST_PANELS, ['panel', 'panels']),
    },
  };
}

function backingFigures(input: BackingInput, { own, wide, best }: ChosenWays): readonly Figure[] {
  const from = (label: string, way: PanelWay | undefined): readonly Figure[] =>
    way === undefined ? [] : [{ label, quantity: fabricToBuy(input, way) }];
  const seams: Figure = { label: 'Length of seams', quantity: givenLength(best.seamLength) };
  return [
    ...from('Fabric to buy', own),
    ...from(own === undefined ? 'Wide backing to buy' : 'Or wide backing', wide),
    { label: 'Pieced from', quantity: wordsQuantity(wayInWords(best)) },
    { label: 'Cut size of the backing', quantity: backingSize(input) },
    ...(best.seamLength === 0 ? [] : [seams]),
    ...matchFigures(input, best),
  ];
}

function matchFigures(input: BackingInput, { panelsRun, panelLength }: PanelWay): readonly Figure[] {
  if (input.printRepeat === 0) return [];
  const cut = backingSize(input);
  const plain = panelsRun === 'up' ? cut.length.rounded : cut.width.rounded;
  const extra = givenLength(lengthSubtract(panelLength, plain));
  return [{ label: 'Extra on each panel to match the print', quantity: extra }];
}

function wayInWords({ panels, panelsRun, last, lastStrips }: PanelWay): string {
  if (panels === 1) return panelsRun === 'up' ? 'one width, lengthwise' : 'one width, crosswise';
  const seams = panelsRun === 'up' ? 'lengthwise (vertical) seams' : 'crosswise (horizontal) seams';
  if (last === 'outer') return `${panels} panels, ${seams}; the outer two of the same width`;
  const strips = lastStrips === 1 ? 'one strip' : `${lastStrips} strips`;
  const joined = last === 'whole' ? '' : `; the last panel from ${strips} cut ${last} the fabric`;
  return `${panels} panels, ${seams}${joined}`;
}

function waysTable(input: BackingInput, { ways, wideWays }: BackingDetails): Table {
  return {
    title: 'Every way',
    columns: ['Fabric width', 'Way', 'Panel', 'Last panel', 'Needed', 'To buy', 'Seams', 'Left over'],
    rows: [...ways, ...wideWays].map((way) => [
      givenLength(way.fabric.width),
      wordsQuantity(wayInWords(way)),
      sizeQuantity(givenLength(way.fabric.width), givenLength(way.panelLength)),
      sizeQuantity(givenLength(way.lastWidth), givenLength(way.lastStripLength)),
      givenLength(way.fabricLength),
      fabricToBuy(input, way),
      givenLength(way.seamLength),
      areaQuantity(leftoverArea(way)),
    ]),
  };
}
