import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import type { BiasStripsDetails, BiasStripsInput } from './input';

/** The piece of fabric with every strip on it, in two tones so that neighbors look different. */
export function biasStripsDiagram(input: BiasStripsInput, { strips }: BiasStripsDetails): Diagram {
  const { pieceWidth: width, pieceLength: height } = input;
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const dimension = { part: 'dimension', offset: (0 - width) / 12 } as const;
  return {
    title: 'The strips on the piece of fabric',
    width,
    height,
    parts: [
      { part: 'polygon', points: corners, tone: 'leftover' },
      ...strips.map((strip, index): DiagramPart => ({
        part: 'polygon',
        points: strip.corners,
        tone: index % 2 === 0 ? 'fabric' : 'fabric-alternate',
      })),
      { ...dimension, from: { x: 0, y: height }, to: { x: width, y: height }, length: width },
      { ...dimension, from: { x: width, y: height }, to: { x: width, y: 0 }, length: height },
    ],
  };
}
