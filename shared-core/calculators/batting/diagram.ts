import { UNITS_PER_INCH } from '#core/units/length';
import type { Diagram } from '../diagram';
import { outlinePart } from '../outline/outline-part';
import type { BattingDetails } from './work';
import type { BattingInput } from './input';

/** The sheet and the top, drawn on the smallest package that covers. */
export function battingDiagram(input: BattingInput, { width, length, packages }: BattingDetails): Diagram {
  const margin = 6 * UNITS_PER_INCH;
  const [one] = packages;
  const [sheetWidth, sheetLength] =
    one === undefined ? [width, length] : one.isTurned ? [one.length, one.width] : [one.width, one.length];
  const rectangle = (w: number, l: number) => [
    { x: margin, y: margin },
    { x: margin + w, y: margin },
    { x: margin + w, y: margin + l },
    { x: margin, y: margin + l },
  ];
  return {
    title:
      one === undefined ? 'The batting under the top' : `The batting, cut from the package “${one.name}”`,
    width: sheetWidth + 2 * margin,
    height: sheetLength + 2 * margin,
    parts: [
      { part: 'polygon', points: rectangle(sheetWidth, sheetLength), tone: 'leftover' },
      { part: 'polygon', points: rectangle(width, length), tone: 'fabric' },
      outlinePart(input.outline, { x: margin + width / 2, y: margin + length / 2 }, 'plan'),
      {
        part: 'dimension',
        from: { x: margin, y: margin },
        to: { x: margin + width, y: margin },
        offset: margin / 2,
        length: width,
      },
      {
        part: 'dimension',
        from: { x: margin, y: margin },
        to: { x: margin, y: margin + length },
        offset: -margin / 2,
        length,
      },
    ],
  };
}
