import type { Diagram, DiagramPart, DiagramPoint } from '#core/calculators/diagram';

/** How a drawing in 1/320 mm is placed on pixels: scaled by `scale`, then moved. */
export interface DiagramFrame {
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  readonly toX: (x: number) => number;
  readonly toY: (y: number) => number;
}

/** Pixels kept free around the drawing for the ends of lines. */
const EDGE = 10;
/** Room outside a dimension line for its text. */
const TEXT_ROOM = 14;
const LABEL_CHARACTER = 7.5;

/** Fits a drawing, with its dimension lines and labels, into at most `maxWidth` by `maxHeight` pixels. */
export function frameDiagram(diagram: Diagram, maxWidth: number, maxHeight: number): DiagramFrame {
  const bodyScale = Math.min(maxWidth / Math.max(diagram.width, 1), maxHeight / Math.max(diagram.height, 1));
  let scale = bodyScale;
  let box = pixelBox(diagram, scale);
  // Text keeps its size while the drawing shrinks, so the fit takes a few steps.
  for (let step = 0; step < 12 && (box.width > maxWidth || box.height > maxHeight); step += 1) {
    scale *= Math.min(maxWidth / box.width, maxHeight / box.height, 0.98);
    box = pixelBox(diagram, scale);
  }
  const finalScale = scale;
  return {
    scale,
    width: box.width,
    height: box.height,
    toX: (x) => x * finalScale - box.left,
    toY: (y) => y * finalScale - box.top,
  };
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

function pixelBox(diagram: Diagram, scale: number): Box {
  const places = [
    { x: 0, y: 0 },
    { x: diagram.width * scale, y: diagram.height * scale },
    ...diagram.parts.flatMap((part) => partPlaces(part, scale)),
  ];
  const xs = places.map((place) => place.x);
  const ys = places.map((place) => place.y);
  const left = Math.min(...xs) - EDGE;
  const top = Math.min(...ys) - EDGE;
  return { left, top, width: Math.max(...xs) + EDGE - left, height: Math.max(...ys) + EDGE - top };
}

/** The outermost points of a part, in pixels. Round parts count as their bounding square. */
function partPlaces(part: DiagramPart, scale: number): readonly DiagramPoint[] {
  const place = (point: DiagramPoint) => ({ x: point.x * scale, y: point.y * scale });
  switch (part.part) {
    case 'polygon':
      return part.points.map(place);
    case 'line':
      return [place(part.from), place(part.to)];
    case 'arc':
      return arcPlaces(part).map(place);
    case 'circle':
      return around(place(part.center), part.radius * scale, part.radius * scale);
    case 'ellipse':
      return around(place(part.center), part.radiusX * scale, part.radiusY * scale);
    case 'label': {
      const at = place(part.at);
      const size = part.text.length * LABEL_CHARACTER;
      const left = at.x - { start: 0, middle: size / 2, end: size }[part.anchor];
      return [
        { x: left, y: at.y - 9 },
        { x: left + size, y: at.y + 9 },
      ];
    }
    case 'dimension': {
      const offset = dimensionOffset(part.offset, scale);
      const out = leftOf(part.from, part.to, offset + Math.sign(offset) * TEXT_ROOM);
      return [part.from, part.to].map((point) => ({
        x: point.x * scale + out.x,
        y: point.y * scale + out.y,
      }));
    }
  }
}

const QUARTERS = [-360, -270, -180, -90, 0, 90, 180, 270, 360];

/** The ends of an arc and its outermost points between them: a short arc of a wide circle takes little room. */
function arcPlaces({
  center,
  radius,
  fromDegrees,
  toDegrees,
}: Extract<DiagramPart, { part: 'arc' }>): readonly DiagramPoint[] {
  const [low, high] = [Math.min(fromDegrees, toDegrees), Math.max(fromDegrees, toDegrees)];
  const outermost = QUARTERS.filter((degrees) => low < degrees && degrees < high);
  return [low, ...outermost, high].map((degrees) => {
    const angle = (degrees * Math.PI) / 180;
    return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
  });
}

/** The wanted offset, from 1/320 mm to pixels, but large enough that the text does not touch the edge. */
export function dimensionOffset(offset: number, scale: number): number {
  if (offset === 0) return 0;
  return Math.sign(offset) * Math.max(Math.abs(offset) * scale, 20);
}

function leftOf(from: DiagramPoint, to: DiagramPoint, distance: number): DiagramPoint {
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  return size === 0
    ? { x: 0, y: 0 }
    : { x: ((to.y - from.y) / size) * distance, y: (-(to.x - from.x) / size) * distance };
}

function around(center: DiagramPoint, radiusX: number, radiusY: number): readonly DiagramPoint[] {
  return [
    { x: center.x - radiusX, y: center.y - radiusY },
    { x: center.x + radiusX, y: center.y + radiusY },
  ];
}
