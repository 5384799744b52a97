import type { Outline } from '#core/domain/outline';
import { success } from '#core/result';
import { LENGTH_ZERO } from '#core/units/length';
import type { Calculator } from '../calculator';
import type { Figure, Note, Table } from '../explanation';
import { givenLength, lengthNearest, lengthUp, sizeQuantity, wordsQuantity } from '../quantities';
import { coverSizeDiagram } from './diagram';
import { type CoverSizeInput, coverSizeFromProject, coverSizeInput } from './input';
import { MATTRESSES } from './mattresses';
import { coverSizeSteps, washedSteps } from './steps';
import { type CoveredThing, type CoverSize, washedBounds, workOutCoverSize } from './work';

/** The outline to make; null until it is said what it goes over. */
interface CoverSizeDetails {
  readonly outline: Outline | null;
}

/** How large to make a cover for a table or stand, or a quilt for a bed, so that it hangs as wished once it is washed. */
export const coverSize: Calculator<CoverSizeInput, CoverSizeDetails> = {
  name: 'cover-size',
  version: 1,
  title: 'Size for a table, stand or bed',
  question: 'How large do I make it so that it hangs down as far as I want?',
  stageKinds: ['piecing'],
  isOccasional: true,
  input: coverSizeInput,
  fromProject: coverSizeFromProject,
  calculate(input) {
    const { over } = input;
    const size = over === null ? null : workOutCoverSize(input, over);
    return success({
      figures: over === null || size === null ? figuresAsItIs(input) : figuresOf(input, over, size),
      tables: over === null || over.over === 'bed' ? [mattressTable(input)] : [],
      explanation: over === null || size === null ? washedSteps(input) : coverSizeSteps(input, over, size),
      notes: notesOf(input),
      diagram: over === null || size === null ? null : coverSizeDiagram(input, over, size),
      details: { outline: size?.outline ?? null },
    });
  },
  decides: ({ outline }) => (outline === null ? {} : { outline }),
};

function figuresAsItIs(input: CoverSizeInput): readonly Figure[] {
  const { width, length } = washedBounds(input);
  return [
    { label: 'In place, as it is now', quantity: sizeQuantity(lengthNearest(width), lengthNearest(length)) },
  ];
}

function figuresOf(
  { quiltingPercent }: CoverSizeInput,
  over: CoveredThing,
  size: CoverSize,
): readonly Figure[] {
  const { width, length, makeWidth, makeLength, topWidth, topLength, cornerDrop } = size;
  if (over.over === 'round')
    return [
      { label: 'Make it this far across', quantity: givenLength(makeWidth) },
      ...(quiltingPercent === 0
        ? []
        : [{ label: 'Top, before it is quilted', quantity: givenLength(topWidth) }]),
      { label: 'Across, in place', quantity: givenLength(width) },
    ];
  return [
    { label: 'Make it', quantity: sizeQuantity(givenLength(makeWidth), givenLength(makeLength)) },
    ...(quiltingPercent === 0
      ? []
      : [
          {
            label: 'Top, before it is quilted',
            quantity: sizeQuantity(givenLength(topWidth), givenLength(topLength)),
          },
        ]),
    { label: 'In place', quantity: sizeQuantity(givenLength(width), givenLength(length)) },
    { label: 'A square corner hangs down', quantity: lengthUp(cornerDrop ?? 0) },
  ];
}

/** What each common mattress takes with the same drops; without a bed, the drop counts at the foot too. */
function mattressTable(input: CoverSizeInput): Table {
  const { over, drop, mattresses } = input;
  const asked =
    over?.over === 'bed'
      ? { footDrop: over.footDrop, pillowFold: over.pillowFold }
      : { footDrop: drop, pillowFold: LENGTH_ZERO };
  return {
    title: 'Common mattresses, with the same drop',
    columns: ['Mattress', 'Its size', 'In place', 'Make it'],
    rows: MATTRESSES[mattresses].map(({ name, ...mattress }) => {
      const size = workOutCoverSize(input, { over: 'bed', ...mattress, ...asked });
      return [
        wordsQuantity(name),
        sizeQuantity(givenLength(mattress.width), givenLength(mattress.length)),
        sizeQuantity(givenLength(size.width), givenLength(size.length)),
        sizeQuantity(givenLength(size.makeWidth), givenLength(size.makeLength)),
      ];
    }),
  };
}

function notesOf({ over }: CoverSizeInput): readonly Note[] {
  const note = (kind: Note['kind'], says: string): Note => ({ kind, says, values: {} });
  const isTable = over?.over === 'round' || over?.over === 'rectangle';
  return [
    isTable
      ? note(
          'tip',
          'Measure the table or stand, and how high it is: what hangs down should end above the floor.',
        )
      : note(
          'tip',
          'Measure the table or the mattress. Lists of sizes differ, and a topper makes a mattress higher.',
        ),
    ...(isTable
      ? [
          note(
            'tip',
            'A hole in the middle has its own question, “Size of the hole”, which counts its binding and the wash too.',
          ),
        ]
      : []),
    ...(over?.over === 'round'
      ? []
      : [note('tip', 'Round the lower corners if they would reach the floor.')]),
    note('caution', 'Keep a cover that hangs down out of the way of feet, wheels, candles and heaters.'),
    ...(isTable
      ? []
      : [
          note(
            'caution',
            'Quilts do not belong in a crib in which a baby sleeps. Follow the safe-sleep advice where you live.',
          ),
        ]),
  ];
}
