import { failure, type Result, success } from '#core/result';
import { lengthSubtract } from '#core/units/length';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Note, Table } from '../explanation';
import { areaQuantity, countQuantity, givenLength, sizeQuantity, wordsQuantity } from '../quantities';
import { backingDiagram } from './diagram';
import { backingCuts, backingNeeds } from './fabric';
import { backingSize, backingSteps, fabricToBuy } from './steps';
import { type BackingInput, backingInput, backingInputFromProject } from './input';
import { type BackingDetails, leftoverArea, MOST_PANELS, type PanelWay, panelWays, chosenWays } from './work';

/** Fabric for the back: every way of panels, from ordinary and from wide fabric, with what each takes. */
export const backing: Calculator<BackingInput, BackingDetails> = {
  name: 'backing',
  version: 1,
  title: 'Backing',
  question: 'How much fabric does the back take, and how is it pieced?',
  stageKinds: ['longarm', 'home-quilting'],
  input: backingInput,
  fromProject: backingInputFromProject,
  calculate: calculateBacking,
  needs: backingNeeds,
  cuts: backingCuts,
  isCutLater: true,
};

function calculateBacking(input: BackingInput): Result<Calculation<BackingDetails>, Refusal> {
  const cut = backingSize(input);
  const size = { width: cut.width.rounded, length: cut.length.rounded };
  const { seam, cutStep, printRuns } = input;
  const details: BackingDetails = {
    ...size,
    ways: panelWays(size, { width: input.fabricWidth, seam, cutStep }, printRuns),
    wideWays: panelWays(size, { width: input.wideWidth, seam, cutStep }, printRuns),
  };
  const { own: chosen, wide, best } = chosenWays(details, input);
  if (best === undefined) return failure(refuseNarrowFabric(input));
  return success({
    figures: backingFigures(input, chosen, wide, best),
    tables: [waysTable(input, details)],
    explanation: backingSteps(input, best),
    notes: backingNotes(input, details, best),
    diagram: backingDiagram(input.outline, details, best),
    details,
  });
}

function refuseNarrowFabric({ fabricWidth, seam }: BackingInput): Refusal {
  return {
    code: 'too-many-panels',
    field: ['fabricWidth'],
    says: 'fabric {fabricWidth} wide with seams of {seam} would take more than {most}: take wider fabric or a narrower seam.',
    values: {
      fabricWidth: givenLength(fabricWidth),
      seam: givenLength(seam),
      most: countQuantity(MOST_PANELS, ['panel', 'panels']),
    },
  };
}

function backingFigures(
  input: BackingInput,
  chosen: PanelWay | undefined,
  wide: PanelWay | undefined,
  best: PanelWay,
): readonly Figure[] {
  const from = (label: string, way: PanelWay | undefined): readonly Figure[] =>
    way === undefined ? [] : [{ label, quantity: fabricToBuy(input, way) }];
  const seams: Figure = { label: 'Seams to sew', quantity: givenLength(best.seamLength) };
  return [
    ...from('Fabric to buy', chosen),
    ...from('Or of wide backing', wide),
    { label: 'Pieced from', quantity: wordsQuantity(wayInWords(best)) },
    { label: 'Backing, cut', quantity: backingSize(input) },
    ...(best.seamLength === 0 ? [] : [seams]),
  ];
}

function wayInWords({ panels, panelsRun, last, lastPieces }: PanelWay): string {
  if (panels === 1) return panelsRun === 'up' ? 'one width, upright' : 'one width, lying';
  const run = panelsRun === 'up' ? 'upright, seams up the piece' : 'lying, seams across the piece';
  const strips = lastPieces === 1 ? 'one strip' : `${lastPieces} strips`;
  const pieced = last === 'whole' ? '' : `, the last from ${strips} cut ${last} the fabric`;
  return `${panels} panels ${run}${pieced}`;
}

function waysTable(input: BackingInput, { ways, wideWays }: BackingDetails): Table {
  return {
    title: 'Every way',
    columns: ['Fabric width', 'Way', 'Panel', 'Last panel', 'Off the bolt', 'To buy', 'Seams', 'Left over'],
    rows: [...ways, ...wideWays].map((way) => [
      givenLength(way.fabric.width),
      wordsQuantity(wayInWords(way)),
      sizeQuantity(givenLength(way.fabric.width), givenLength(way.panelLength)),
      sizeQuantity(givenLength(way.lastWidth), givenLength(way.lastPieceLength)),
      givenLength(way.fabricLength),
      fabricToBuy(input, way),
      givenLength(way.seamLength),
      areaQuantity(leftoverArea(way)),
    ]),
  };
}

function backingNotes(input: BackingInput, { ways }: BackingDetails, best: PanelWay): readonly Note[] {
  const trim: Note = {
    kind: 'tip',
    says: 'Cut the selvages off before joining: they draw in when washed. Sew with {seam} and press the seams open.',
    values: { seam: givenLength(input.seam) },
  };
  const turned: Note = {
    kind: 'warning',
    says: 'The strips of the last panel lie crosswise: a print that has an up will lie on its side there.',
    values: {},
  };
  const blade: Note = {
    kind: 'caution',
    says: 'Long cuts with a rotary blade: close it whenever it is put down, cut away from yourself, keep the other hand flat and clear of the ruler’s edge. Press the seams on a heat-safe place and switch the iron off.',
    values: {},
  };
  const [shortest] = ways;
  const saving: readonly Note[] =
    shortest?.fabric.width !== best.fabric.width || shortest.fabricLength === best.fabricLength
      ? []
      : [
          {
            kind: 'tip',
            says: 'With the last panel made from {strips} the fabric off the bolt is {less} shorter.',
            values: {
              strips: countQuantity(shortest.lastPieces, ['strip', 'strips']),
              less: givenLength(lengthSubtract(best.fabricLength, shortest.fabricLength)),
            },
          },
        ];
  return [blade, ...(best.panels > 1 ? [trim] : []), ...saving, ...(best.last === 'across' ? [turned] : [])];
}
