import type { Diagram, DiagramPart, DiagramPoint, Tone } from '#core/calculators/diagram';
import { formatLength } from '#core/units/format-length';
import { lengthFromExact } from '#core/units/length';
import { type DiagramFrame, dimensionOffset, frameDiagram } from './diagram-frame';
import { DimensionLine } from './dimension-line';
import { useDisplay } from '../base/display';
import { HaloText } from './halo-text';
import drawing from './drawing.module.css';
import styles from './diagram.module.css';

interface DiagramViewProps {
  readonly diagram: Diagram;
  /** The largest width in CSS pixels. The drawing shrinks with its column. */
  readonly maxWidth?: number;
  readonly maxHeight?: number;
}

const TONE_WORDS: Readonly<Partial<Record<Tone, string>>> = {
  leftover: 'left over',
  cut: 'cut',
  seam: 'sew',
  fold: 'fold',
  mark: 'line to draw',
  plan: 'not there yet',
  warning: 'mind',
};

/** A drawing to scale with its dimension lines, the same on screen and on paper. */
export function DiagramView({ diagram, maxWidth = 640, maxHeight = 520 }: DiagramViewProps) {
  const frame = frameDiagram(diagram, maxWidth, maxHeight);
  const used = (Object.keys(TONE_WORDS) as Tone[]).filter((tone) =>
    diagram.parts.some((part) => 'tone' in part && part.tone === tone),
  );
  return (
    <figure className={styles['figure']}>
      <svg
        className={drawing['drawing']}
        role="img"
        aria-label={diagram.title}
        width={frame.width}
        height={frame.height}
        viewBox={`0 0 ${String(frame.width)} ${String(frame.height)}`}
      >
        {diagram.parts.map((part, index) => (
          <Part key={index} part={part} frame={frame} />
        ))}
      </svg>
      <figcaption className={drawing['caption']}>{diagram.title}, drawn to scale</figcaption>
      {used.length > 0 && (
        <ul className={styles['legend']}>
          {used.map((tone) => (
            <li key={tone}>
              <svg width={28} height={12} aria-hidden="true">
                <line x1={1} y1={6} x2={27} y2={6} className={styles[tone]} />
              </svg>
              {TONE_WORDS[tone]}
            </li>
          ))}
        </ul>
      )}
    </figure>
  );
}

function Part({ part, frame }: { readonly part: DiagramPart; readonly frame: DiagramFrame }) {
  const { length: display } = useDisplay();
  const place = ({ x, y }: DiagramPoint) => ({ x: frame.toX(x), y: frame.toY(y) });
  switch (part.part) {
    case 'polygon': {
      const corners = part.points.map(place).map(({ x, y }) => `${x.toFixed(2)},${y.toFixed(2)}`);
      return <polygon points={corners.join(' ')} className={styles[part.tone]} />;
    }
    case 'line': {
      const [from, to] = [place(part.from), place(part.to)];
      return <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} className={styles[part.tone]} />;
    }
    case 'circle': {
      const center = place(part.center);
      return (
        <circle cx={center.x} cy={center.y} r={part.radius * frame.scale} className={styles[part.tone]} />
      );
    }
    case 'ellipse': {
      const center = place(part.center);
      const [rx, ry] = [part.radiusX * frame.scale, part.radiusY * frame.scale];
      return <ellipse cx={center.x} cy={center.y} rx={rx} ry={ry} className={styles[part.tone]} />;
    }
    case 'arc':
      return (
        <path
          d={arcPath(place(part.center), part.radius * frame.scale, part)}
          className={styles[part.tone]}
        />
      );
    case 'label': {
      const at = place(part.at);
      return <HaloText at={at} text={part.text} anchor={part.anchor} />;
    }
    case 'dimension':
      return (
        <DimensionLine
          from={place(part.from)}
          to={place(part.to)}
          offset={dimensionOffset(part.offset, frame.scale)}
          text={formatLength(lengthFromExact(part.length, 'nearest'), display)}
        />
      );
  }
}

function arcPath(
  center: DiagramPoint,
  radius: number,
  { fromDegrees, toDegrees }: { readonly fromDegrees: number; readonly toDegrees: number },
): string {
  const at = (degrees: number) => {
    const turn = (degrees * Math.PI) / 180;
    return `${(center.x + radius * Math.cos(turn)).toFixed(2)} ${(center.y + radius * Math.sin(turn)).toFixed(2)}`;
  };
  const isLarge = Math.abs(toDegrees - fromDegrees) > 180 ? 1 : 0;
  const isClockwise = toDegrees > fromDegrees ? 1 : 0;
  return `M ${at(fromDegrees)} A ${String(radius)} ${String(radius)} 0 ${String(isLarge)} ${String(isClockwise)} ${at(toDegrees)}`;
}
