import { failure, type Result, success } from '#core/result';
import type { Calculation, Calculator, Refusal } from '../calculator';
import type { Figure, Note, Table } from '../explanation';
import {
  givenLength,
  lengthUp,
  percentQuantity,
  sizeQuantity,
  weightQuantity,
  wordsQuantity,
} from '../quantities';
import { type PackageWeightInput, packageWeightInput, packageWeightFromProject } from './input';
import { packageSteps } from './steps';
import { carrierUnit, type PackageDetails, workOutPackage } from './work';

/** What the finished piece weighs, and the box it travels in: its sides, girth, and weight by volume. */
export const packageWeight: Calculator<PackageWeightInput, PackageDetails> = {
  name: 'package-weight',
  version: 1,
  title: 'Weight and package',
  question: 'What does the finished piece weigh, and how large is its package?',
  stageKinds: ['hand-finish'],
  isOccasional: true,
  input: packageWeightInput,
  fromProject: packageWeightFromProject,
  calculate: calculatePackageWeight,
};

function calculatePackageWeight(input: PackageWeightInput): Result<Calculation<PackageDetails>, Refusal> {
  const details = workOutPackage(input);
  if (details === null) return failure(refuseNoRoom(input));
  return success({
    figures: figuresOf(input, details),
    tables: [weightTable(input, details)],
    explanation: packageSteps(input, details),
    notes: notesOf(input),
    diagram: null,
    details,
  });
}

function refuseNoRoom({ hole }: PackageWeightInput): Refusal {
  return {
    code: 'no-room',
    field: hole === null ? ['outline'] : ['hole', 'diameter'],
    says: 'A hole this large leaves nothing of the piece.',
    values: {},
  };
}

function figuresOf(input: PackageWeightInput, details: PackageDetails): readonly Figure[] {
  const { folded, box, byVolume, charged } = details;
  const [long, middle, short] = box.sides;
  const unit = carrierUnit(input);
  return [
    { label: 'The finished piece weighs about', quantity: weightQuantity(details.pieceGrams) },
    { label: 'The package weighs about', quantity: weightQuantity(details.packageGrams) },
    { label: 'Weight charged', quantity: weightQuantity(charged * unit.grams) },
    ...(byVolume === null
      ? []
      : [{ label: 'Weight by volume', quantity: weightQuantity(byVolume * unit.grams) }]),
    { label: 'Folded', quantity: sizeQuantity(lengthUp(folded.width), lengthUp(folded.length)) },
    { label: 'Folded, its height', quantity: lengthUp(folded.thickness) },
    { label: 'Box, its two longer sides', quantity: sizeQuantity(long, middle) },
    { label: 'Box, its shortest side', quantity: short },
    { label: 'Girth of the box', quantity: lengthUp(box.girth) },
    { label: 'Length and girth together', quantity: lengthUp(box.lengthAndGirth) },
  ];
}

function weightTable({ other, packing }: PackageWeightInput, details: PackageDetails): Table {
  const { topGrams, layersGrams, bindingGrams, packageGrams } = details;
  const rows = [
    ['Top', topGrams],
    ['Backing and batting', layersGrams],
    ['Binding', bindingGrams],
    ['Thread, label and the like', other],
    ['Box and packing', packing],
  ] as const;
  const share = (grams: number) => percentQuantity((100 * grams) / packageGrams);
  return {
    title: 'Weight of the package',
    columns: ['Part', 'Weight', 'Share'],
    rows: [
      ...rows.map(([part, grams]) => [wordsQuantity(part), weightQuantity(grams, 'nearest'), share(grams)]),
      [wordsQuantity('Package'), weightQuantity(packageGrams), share(packageGrams)],
    ],
  };
}

function notesOf({ divisor, boxRoom }: PackageWeightInput): readonly Note[] {
  const tip = (says: string, values: Note['values'] = {}): Note => ({ kind: 'tip', says, values });
  return [
    tip(
      'Weigh and measure the packed box before you pay for it. The figures are good enough to choose a box.',
    ),
    ...(divisor === 0
      ? [tip('Ask your carrier whether a large, light box is charged by its volume, and by which divisor.')]
      : []),
    tip(
      'Wrap the piece against damp, and put the address inside the box too. Room of {room} on every side is in the box.',
      {
        room: givenLength(boxRoom),
      },
    ),
    tip(
      'Carriers limit weight, length and girth, each in its own way. Compare the figures with the limits of yours.',
    ),
  ];
}
