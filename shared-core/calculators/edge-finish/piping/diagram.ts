import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import type { PipingInput } from './input';
import { stripToCut } from './work';

/** The end of the piping, as if cut through: the cord, and the strip around it down to its cut edges. */
export function pipingDiagram(input: PipingInput): Diagram {
  const { cord, seamAllowance: seam } = input;
  const strip = stripToCut(input).exact;
  const radius = cord / 2;
  const center = { x: strip / 2, y: radius };
  const layer = (x: number): DiagramPart => ({
    part: 'line',
    from: { x, y: cord },
    to: { x, y: cord + seam },
    tone: 'fold',
  });
  const below = cord + seam;
  return {
    title: 'The piping from its end, and the strip laid flat below it',
    width: strip,
    height: below + seam,
    parts: [
      { part: 'circle', center, radius, tone: 'fabric' },
      layer(center.x - seam / 40),
      layer(center.x + seam / 40),
      {
        part: 'line',
        from: { x: center.x - radius, y: cord },
        to: { x: center.x + radius, y: cord },
        tone: 'seam',
      },
      {
        part: 'line',
        from: { x: 0, y: below + seam / 2 },
        to: { x: strip, y: below + seam / 2 },
        tone: 'cut',
      },
      {
        part: 'dimension',
        from: { x: 0, y: below + seam / 2 },
        to: { x: strip, y: below + seam / 2 },
        offset: (0 - seam) / 3,
        length: strip,
      },
    ],
  };
}
