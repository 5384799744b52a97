import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import type { Explanation, Rule } from '#core/calculators/explanation';
import { countQuantity, givenLength, lengthQuantity, wordsQuantity } from '#core/calculators/quantities';
import type { BiasStripsDetails, BiasStripsInput } from './input';
import { slantedJoinCost } from './work';

/** The strips, what their joins take, and what is left. */
export function biasStripsSteps(input: BiasStripsInput, details: BiasStripsDetails): Explanation {
  const derived = (says: string): Rule => ({ kind: 'derived', says });
  const sum = details.strips.reduce((so, { middle }) => so + middle, 0);
  const join = lengthQuantity(slantedJoinCost(input.seamAllowance), { direction: 'up' });
  const count = countQuantity(details.strips.length, ['strip', 'strips']);
  return [
    {
      label: 'All strips, along their middles',
      formula: 'S = ℓ₁ + ℓ₂ + … + ℓₙ',
      terms: [
        { symbol: 'n', means: 'strips', quantity: count },
        { symbol: 'ends', means: 'all ends run', quantity: wordsQuantity(details.ends) },
      ],
      result: lengthQuantity(sum, { direction: 'down' }),
      rule: derived(
        'The largest slanted strip that fits each band, with all ends on the same grain so that any two can be joined.',
      ),
    },
    {
      label: 'A join',
      formula: 'j = 2s√2',
      terms: [{ symbol: 's', means: 'seam allowance', quantity: givenLength(input.seamAllowance) }],
      result: join,
      rule: derived('The seam runs at 45° to the strip, so each allowance takes s√2 of its length.'),
    },
    {
      label: 'Joined, with both ends cut square',
      formula: 'S − (n − 1) · j − w',
      terms: [
        { symbol: 'S', means: 'all strips', quantity: lengthQuantity(sum, { direction: 'down' }) },
        { symbol: 'n', means: 'strips', quantity: count },
        { symbol: 'j', means: 'a join', quantity: join },
        { symbol: 'w', means: 'strip width', quantity: givenLength(input.stripWidth) },
      ],
      result: lengthQuantity(details.gives, { direction: 'down' }),
      rule: derived('Squaring a slanted end takes half a strip width.'),
    },
  ];
}

/** The fabric with every strip on it, in two tones so that neighbors can be told apart. */
export function biasStripsDiagram(input: BiasStripsInput, { strips }: BiasStripsDetails): Diagram {
  const { pieceWidth: width, pieceLength: height } = input;
  const fabric = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  return {
    title: 'The strips on the fabric',
    width,
    height,
    parts: [
      { part: 'polygon', points: fabric, tone: 'leftover' },
      ...strips.map(({ corners }, index): DiagramPart => ({
        part: 'polygon',
        points: corners,
        tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate',
      })),
      {
        part: 'dimension',
        from: { x: 0, y: height },
        to: { x: width, y: height },
        offset: -1 * (width / 12),
        length: width,
      },
      {
        part: 'dimension',
        from: { x: width, y: height },
        to: { x: width, y: 0 },
        offset: -1 * (width / 12),
        length: height,
      },
    ],
  };
}
