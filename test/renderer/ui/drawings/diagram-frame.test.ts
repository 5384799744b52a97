import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Diagram, DiagramPart } from '#core/calculators/diagram';
import { frameDiagram } from '#renderer/ui/drawings/diagram-frame';

const drawing = (...parts: readonly DiagramPart[]): Diagram => ({
  title: 'A square',
  width: 400,
  height: 400,
  parts,
});
const square: DiagramPart = {
  part: 'polygon',
  points: [
    { x: 0, y: 0 },
    { x: 400, y: 0 },
    { x: 400, y: 400 },
    { x: 0, y: 400 },
  ],
  tone: 'fabric',
};

describe('the frame of a drawing', () => {
  it('is no wider for a short arc of a wide circle that runs inside the drawing', () => {
    const arc: DiagramPart = {
      part: 'arc',
      center: { x: 0, y: 0 },
      radius: 280,
      fromDegrees: 37,
      toDegrees: 53,
      tone: 'mark',
    };
    const [without, inside] = [
      frameDiagram(drawing(square), 600, 600),
      frameDiagram(drawing(square, arc), 600, 600),
    ];
    expect([inside.scale, inside.width, inside.height]).toEqual([
      without.scale,
      without.width,
      without.height,
    ]);
  });

  it('holds every point of any arc', () => {
    const degrees = fc.integer({ min: -180, max: 180 });
    fc.assert(
      fc.property(degrees, fc.integer({ min: 1, max: 180 }), (fromDegrees, span) => {
        const center = { x: 200, y: 200 };
        const arc: DiagramPart = {
          part: 'arc',
          center,
          radius: 300,
          fromDegrees,
          toDegrees: fromDegrees + span,
          tone: 'mark',
        };
        const frame = frameDiagram(drawing(square, arc), 600, 600);
        for (let step = 0; step <= 60; step += 1) {
          const angle = ((fromDegrees + (span * step) / 60) * Math.PI) / 180;
          const x = frame.toX(center.x + 300 * Math.cos(angle));
          const y = frame.toY(center.y + 300 * Math.sin(angle));
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(frame.width);
          expect(y).toBeLessThanOrEqual(frame.height);
        }
      }),
    );
  });
});
