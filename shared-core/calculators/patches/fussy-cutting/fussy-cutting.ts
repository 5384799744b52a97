import { failure, success } from '#core/result';
import type { Calculator, Refusal } from '#core/calculators/calculator';
import { cautionNotes } from '#core/calculators/caution-notes';
import type { Note } from '#core/calculators/explanation';
import { fabricNeed } from '#core/calculators/needs';
import { countQuantity, givenLength, lengthUp, sizeQuantity, yardageUp } from '#core/calculators/quantities';
import { fussyCuttingDiagram } from './diagram';
import { type FussyCuttingInput, fussyCuttingFromProject, fussyCuttingInput } from './input';
import { fussyCuttingSteps } from './steps';
import { fussyCutting as work, type FussyCuttingDetails, patchesFrom } from './work';

/** Patches that each show the same figure of a print: how many come from a length, and how much fabric they take. */
export const fussyCutting: Calculator<FussyCuttingInput, FussyCuttingDetails> = {
  name: 'fussy-cutting',
  version: 1,
  title: 'Fussy cutting',
  question: 'How much fabric do patches take that each show the same figure?',
  stageKinds: ['piecing'],
  isOccasional: true,
  input: fussyCuttingInput,
  fromProject: fussyCuttingFromProject,
  calculate(input) {
    const details = work(input);
    if (details === null) return failure(refuseNarrow(input));
    return success({
      figures: [
        { label: 'Fabric to buy', quantity: yardageUp(details.fabricLength, input.yardageStep) },
        {
          label: 'Patches from the length at hand',
          quantity: countQuantity(patchesFrom(input.atHand, details, input.repeatAlong), [
            'patch',
            'patches',
          ]),
        },
        { label: 'Patches across the fabric', quantity: countQuantity(details.across, ['patch', 'patches']) },
        { label: 'Rows', quantity: countQuantity(details.rows, ['row', 'rows']) },
        {
          label: 'Cut size of a patch',
          quantity: sizeQuantity(givenLength(details.cutWidth), givenLength(details.cutLength)),
        },
      ],
      tables: [],
      explanation: fussyCuttingSteps(input, details),
      notes: [...cautionNotes('rotaryBlade'), FIND_IT],
      diagram: fussyCuttingDiagram(input, details),
      details,
    });
  },
  needs: ({ fabricWidth }, { fabricLength }) => [
    fabricNeed(
      'Print for fussy cutting',
      [{ width: fabricWidth, length: fabricLength, count: 1, mayTurn: false }],
      {
        fabricWidth,
      },
    ),
  ],
};

const FIND_IT: Note = {
  kind: 'tip',
  says: 'Cut a window of the finished size in card and lay it on the print. Cut one seam allowance outside it on every side.',
  values: {},
};

function refuseNarrow(input: FussyCuttingInput): Refusal {
  const { windowWidth, seam, repeatAcross, fabricWidth } = input;
  return {
    code: 'no-patch-across',
    field: ['windowWidth'],
    says: 'A patch cut {cut} wide is not sure to fit in fabric {fabric} wide whose print repeats every {repeat}.',
    values: {
      cut: lengthUp(windowWidth + 2 * seam),
      fabric: givenLength(fabricWidth),
      repeat: givenLength(repeatAcross),
    },
  };
}
