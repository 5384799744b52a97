import { lengthFromExact } from '#core/units/length';
import type { Polygon } from '#core/geometry/polygon';
import type { Diagram, DiagramPart, Tone } from '../diagram';
import { rectangleAt } from '../patches/cut-shapes';
import type { TopWork } from './work';

const FABRIC_TONES: readonly Tone[] = ['fabric', 'fabric-alternate'];

/** The finished top: its blocks in two tones by their kind, and sashing, borders and rings in two tones by their fabric. */
export function topDiagram({ assembly, input }: TopWork): Diagram {
  const edge = Math.max(assembly.width, assembly.length) / 12;
  const moved = (polygon: Polygon) =>
    polygon.map(({ x, y }) => ({ x: x - assembly.x + edge, y: y - assembly.y + edge }));
  const blocks = assembly.blocks.map(({ block, x, y }): DiagramPart => {
    const kind = input.blocks.findIndex((one) => one.name === block.name);
    const points = moved(rectangleAt(x, y, block.width, block.length));
    return { part: 'polygon', points, tone: kind % 2 === 0 ? 'fabric' : 'fabric-alternate' };
  });
  const labels = input.fabrics.map(({ label }) => label);
  const patches = assembly.patches.map(({ fabric, polygon }): DiagramPart => {
    const tone = FABRIC_TONES[Math.max(0, labels.indexOf(fabric)) % FABRIC_TONES.length] ?? 'fabric';
    return { part: 'polygon', points: moved(polygon), tone };
  });
  const corner = { x: edge, y: edge };
  const across: DiagramPart = {
    part: 'dimension',
    from: corner,
    to: { x: edge + assembly.width, y: edge },
    offset: edge / 2,
    length: lengthFromExact(assembly.width, 'nearest'),
  };
  const down: DiagramPart = {
    part: 'dimension',
    from: { x: edge, y: edge + assembly.length },
    to: corner,
    offset: edge / 2,
    length: lengthFromExact(assembly.length, 'nearest'),
  };
  return {
    title: 'The finished top',
    width: assembly.width + 2 * edge,
    height: assembly.length + 2 * edge,
    parts: [...blocks, ...patches, across, down],
  };
}
