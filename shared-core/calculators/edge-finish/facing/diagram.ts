import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import type { FacingInput } from './input';
import type { FacingDetails } from './work';

/** The patch of a shaped facing with its lines; a stretch of the strip otherwise. */
export function facingDiagram(input: FacingInput, details: FacingDetails): Diagram {
  if (details.patch !== null && input.around === 'hole' && input.hole !== null)
    return holeDiagram(input, details.patch, input.hole.diameter / 2);
  return stripDiagram(input);
}

function holeDiagram(
  { seamAllowance, width, turnedEdge }: FacingInput,
  patch: NonNullable<FacingDetails['patch']>,
  cutRadius: number,
): Diagram {
  const center = { x: patch.width / 2, y: patch.length / 2 };
  const seam = cutRadius + seamAllowance;
  const circle = (radius: number, tone: 'cut' | 'seam' | 'fold'): DiagramPart => ({
    part: 'circle',
    center,
    radius,
    tone,
  });
  const across = (radius: number, offset: number): DiagramPart => ({
    part: 'dimension',
    from: { x: center.x - radius, y: center.y },
    to: { x: center.x + radius, y: center.y },
    offset,
    length: 2 * radius,
  });
  return {
    title: 'The patch, with the line to sew, the hole to cut inside it, and the fold of its outer edge',
    width: patch.width,
    height: patch.length,
    parts: [
      {
        part: 'polygon',
        points: [
          { x: 0, y: 0 },
          { x: patch.width, y: 0 },
          { x: patch.width, y: patch.length },
          { x: 0, y: patch.length },
        ],
        tone: 'fabric',
      },
      circle(seam + width + turnedEdge, 'cut'),
      ...(turnedEdge > 0 ? [circle(seam + width, 'fold')] : []),
      circle(seam, 'seam'),
      circle(cutRadius, 'cut'),
      across(seam, -center.y / 8),
    ],
  };
}

/** Four widths long, the seam at the top and the fold at the bottom. */
function stripDiagram({ seamAllowance, width, turnedEdge }: FacingInput): Diagram {
  const height = seamAllowance + width + turnedEdge;
  const long = 4 * height;
  const line = (y: number, tone: 'seam' | 'fold'): DiagramPart => ({
    part: 'line',
    from: { x: 0, y },
    to: { x: long, y },
    tone,
  });
  return {
    title: 'The facing laid flat: the seam above, the fold of its sewn edge below',
    width: long,
    height,
    parts: [
      {
        part: 'polygon',
        points: [
          { x: 0, y: 0 },
          { x: long, y: 0 },
          { x: long, y: height },
          { x: 0, y: height },
        ],
        tone: 'fabric',
      },
      line(seamAllowance, 'seam'),
      ...(turnedEdge > 0 ? [line(height - turnedEdge, 'fold')] : []),
      {
        part: 'dimension',
        from: { x: 0, y: height },
        to: { x: 0, y: 0 },
        offset: height / 4,
        length: height,
      },
    ],
  };
}
