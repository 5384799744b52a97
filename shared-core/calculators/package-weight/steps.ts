import type { Step } from '../explanation';
import { outlineBounds } from '../outline/outline-measures';
import {
  areaQuantity,
  givenLength,
  lengthUp,
  numberQuantity,
  percentQuantity,
  weightQuantity,
} from '../quantities';
import { commonPractice, derived, givenTerm, term } from '../working/terms';
import type { PackageWeightInput } from './input';
import { carrierUnit, type PackageDetails } from './work';

export function packageSteps(input: PackageWeightInput, details: PackageDetails): readonly Step[] {
  return [
    ...weightSteps(input, details),
    ...foldSteps(input, details),
    ...boxSteps(input, details),
    ...chargeSteps(input, details),
  ];
}

function weightSteps(input: PackageWeightInput, details: PackageDetails): readonly Step[] {
  const fabric = term('g', 'grams per square meter of fabric', numberQuantity(input.fabricWeight));
  const area = term('A', 'area of the finished piece', areaQuantity(details.area));
  const near = (grams: number) => weightQuantity(grams, 'nearest');
  return [
    {
      label: 'Top',
      formula: 'A × g × (1 + e)',
      terms: [area, fabric, term('e', 'fabric in its seams', percentQuantity(input.seamExtraPercent))],
      result: near(details.topGrams),
      rule: derived('Area times the weight of a square meter, with the extra fabric in the seams.'),
    },
    {
      label: 'Backing and batting',
      formula: 'A × (k + b)',
      terms: [
        area,
        term('k', 'grams per square meter of backing', numberQuantity(input.backingWeight)),
        term('b', 'grams per square meter of batting', numberQuantity(input.battingWeight)),
      ],
      result: near(details.layersGrams),
      rule: derived('Trimmed to the size of the top.'),
    },
    {
      label: 'Binding',
      formula: 'B × g',
      terms: [term('B', 'its edges times its width as cut', areaQuantity(details.bindingArea)), fabric],
      result: near(details.bindingGrams),
      rule: derived('Its joins and corners weigh too little to count.'),
    },
    {
      label: 'The finished piece',
      formula: 'top + layers + binding + other',
      terms: [
        term('top', 'as above', near(details.topGrams)),
        term('layers', 'backing and batting', near(details.layersGrams)),
        term('binding', 'as above', near(details.bindingGrams)),
        term('other', 'thread, label and the like', near(input.other)),
      ],
      result: weightQuantity(details.pieceGrams),
      rule: derived('The sum of its parts.'),
    },
    {
      label: 'The package',
      formula: 'piece + box',
      terms: [
        term('piece', 'as above', weightQuantity(details.pieceGrams)),
        term('box', 'box and packing', near(input.packing)),
      ],
      result: weightQuantity(details.packageGrams),
      rule: derived('The piece in its box.'),
    },
  ];
}

function foldSteps(input: PackageWeightInput, { folded }: PackageDetails): readonly Step[] {
  const { width, length } = outlineBounds(input.outline);
  const [across, along] = [
    term('m', 'parts across', numberQuantity(input.partsAcross)),
    term('n', 'parts along', numberQuantity(input.partsAlong)),
  ];
  return [
    {
      label: 'Folded width',
      formula: 'W ÷ m',
      terms: [term('W', 'width of the piece', lengthUp(width)), across],
      result: lengthUp(folded.width),
      rule: derived('Equal parts.'),
    },
    {
      label: 'Folded length',
      formula: 'L ÷ n',
      terms: [term('L', 'length of the piece', lengthUp(length)), along],
      result: lengthUp(folded.length),
      rule: derived('Equal parts.'),
    },
    {
      label: 'Height of the pile',
      formula: 'm × n × t',
      terms: [across, along, givenTerm('t', 'thickness of one layer', input.layerThickness)],
      result: lengthUp(folded.thickness),
      rule: derived('Every fold lays the same piece over itself.'),
    },
  ];
}

function boxSteps({ boxRoom }: PackageWeightInput, { folded, box }: PackageDetails): readonly Step[] {
  const [long, middle, short] = box.sides;
  const foldedSides = [folded.width, folded.length, folded.thickness].toSorted((one, other) => other - one);
  const names = ['longest', 'middle', 'shortest'];
  return [
    ...box.sides.map((side, index): Step => ({
      label: `The ${names[index] ?? ''} side of the box`,
      formula: 'f + 2 × r, rounded up',
      terms: [
        term('f', 'this side of the folded piece', lengthUp(foldedSides[index] ?? 0)),
        givenTerm('r', 'room on every side', boxRoom),
      ],
      result: side,
      rule: commonPractice('Carriers round each side up to a whole inch or centimeter.'),
    })),
    {
      label: 'Girth',
      formula: '2 × (b + c)',
      terms: [
        term('b', 'middle side', givenLength(middle.rounded)),
        term('c', 'shortest side', givenLength(short.rounded)),
      ],
      result: lengthUp(box.girth),
      rule: {
        kind: 'published',
        says: 'Postal services measure the girth around the two shorter sides, at right angles to the length.',
      },
    },
    {
      label: 'Length and girth together',
      formula: 'a + G',
      terms: [term('a', 'longest side', givenLength(long.rounded)), term('G', 'girth', lengthUp(box.girth))],
      result: lengthUp(box.lengthAndGirth),
      rule: { kind: 'published', says: 'The size that postal services limit for a large box.' },
    },
  ];
}

function chargeSteps(
  input: PackageWeightInput,
  { box, byVolume, packageGrams, larger, charged }: PackageDetails,
): readonly Step[] {
  const unit = carrierUnit(input);
  const side = (index: 0 | 1 | 2) => numberQuantity(box.sides[index].rounded / unit.side);
  const weight = term(
    'p',
    `weight of the package, in ${unit.weightName}`,
    numberQuantity(packageGrams / unit.grams),
  );
  const grams = term('g', `grams in one of the ${unit.weightName}`, numberQuantity(unit.grams));
  const volume = term('v', `weight by volume, in ${unit.weightName}`, numberQuantity(byVolume ?? 0));
  const byVolumeStep: Step = {
    label: 'Weight by volume',
    formula: 'a × b × c ÷ d × g',
    terms: [
      term('a', `longest side, in ${unit.sideName}`, side(0)),
      term('b', 'middle side', side(1)),
      term('c', 'shortest side', side(2)),
      term('d', 'divisor of the carrier', numberQuantity(input.divisor)),
      grams,
    ],
    result: weightQuantity((byVolume ?? 0) * unit.grams),
    rule: { kind: 'published', says: 'Carriers divide the volume of the box by a divisor of their own.' },
  };
  return [
    ...(byVolume === null ? [] : [byVolumeStep]),
    {
      label: `Weight that counts, in ${unit.weightName}`,
      formula: byVolume === null ? 'p' : 'max(p, v)',
      terms: byVolume === null ? [weight] : [weight, volume],
      result: numberQuantity(larger),
      rule: commonPractice('The larger of the two is charged, rounded up to the step of the carrier.'),
    },
    {
      label: 'Weight charged',
      formula: 'c × g',
      terms: [
        term('c', `weight that counts, rounded up, in ${unit.weightName}`, numberQuantity(charged)),
        grams,
      ],
      result: weightQuantity(charged * unit.grams),
      rule: derived('From the unit of the carrier into yours.'),
    },
  ];
}
