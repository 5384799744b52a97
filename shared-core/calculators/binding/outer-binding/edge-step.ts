import { assertNever } from '#core/assert-never';
import type { Outline } from '#core/domain/outline';
import type { Length } from '#core/units/length';
import type { Step, Term } from '#core/calculators/explanation';
import { cornerRadiusOf, outlinePerimeter } from '#core/calculators/outline/outline-measures';
import { countQuantity, givenLength, lengthDown, lengthQuantity } from '#core/calculators/quantities';

/** How long the edge of an outline is, with the formula of its shape. */
export function outlineEdgeStep(outline: Outline): Step {
  return {
    label: 'Length of the edge',
    ...edgeFormula(outline),
    result: lengthQuantity(outlinePerimeter(outline), { direction: 'up' }),
    rule: { kind: 'derived', says: edgeRule(outline) },
  };
}

function edgeFormula(outline: Outline): Pick<Step, 'formula' | 'terms'> {
  const term = (symbol: string, means: string, length: Length): Term => ({
    symbol,
    means,
    quantity: givenLength(length),
  });
  switch (outline.shape) {
    case 'square':
      return { formula: 'P = 4a', terms: [term('a', 'side', outline.side)] };
    case 'rectangle':
      return {
        formula: 'P = 2(W + L)',
        terms: [term('W', 'width', outline.width), term('L', 'length', outline.length)],
      };
    case 'rounded':
      return {
        formula: 'P = 2(W + L) − 2r(4 − π)',
        terms: [
          term('W', 'width', outline.width),
          term('L', 'length', outline.length),
          { symbol: 'r', means: 'radius of the corners', quantity: lengthDown(cornerRadiusOf(outline)) },
        ],
      };
    case 'circle':
      return { formula: 'P = πD', terms: [term('D', 'diameter', outline.diameter)] };
    case 'ellipse':
      return {
        formula: 'P = ∮ √(dx² + dy²)',
        terms: [term('W', 'width', outline.width), term('L', 'length', outline.length)],
      };
    case 'hexagon':
      return { formula: 'P = 6F ÷ √3', terms: [term('F', 'across the flats', outline.acrossFlats)] };
    case 'octagon':
      return { formula: 'P = 8F(√2 − 1)', terms: [term('F', 'across the flats', outline.acrossFlats)] };
    case 'sides':
      return {
        formula: 'P = a₁ + a₂ + … + aₙ',
        terms: [
          { symbol: 'n', means: 'sides', quantity: countQuantity(outline.sides.length, ['side', 'sides']) },
        ],
      };
    default:
      return assertNever(outline);
  }
}

function edgeRule(outline: Outline): string {
  return outline.shape === 'ellipse'
    ? 'An ellipse has no simple formula. Its length comes from the arithmetic-geometric mean, to a billionth.'
    : 'Once all the way around.';
}
