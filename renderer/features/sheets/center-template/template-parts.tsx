import type { DiagramPart } from '#core/calculators/diagram';
import styles from './template.module.css';

/** Draws parts at true size: coordinates stay in whole 1/320 mm, and lines have their own weights. */
export function TemplateParts({ parts }: { readonly parts: readonly DiagramPart[] }) {
  return parts.map((part, index) => <Part key={index} part={part} />);
}

function Part({ part }: { readonly part: DiagramPart }) {
  switch (part.part) {
    case 'circle':
      return <circle cx={part.center.x} cy={part.center.y} r={part.radius} className={styles[part.tone]} />;
    case 'line':
      return (
        <line x1={part.from.x} y1={part.from.y} x2={part.to.x} y2={part.to.y} className={styles[part.tone]} />
      );
    case 'arc':
      return <path d={arcPath(part)} className={styles[part.tone]} />;
    case 'polygon':
      return (
        <polygon
          points={part.points.map(({ x, y }) => `${String(x)},${String(y)}`).join(' ')}
          className={styles[part.tone]}
        />
      );
    case 'label':
      return (
        <text x={part.at.x} y={part.at.y} textAnchor={part.anchor} className={styles['label']}>
          {part.text}
        </text>
      );
    case 'ellipse':
    case 'dimension':
      return null;
  }
}

/** An arc that runs clockwise through less than half a turn; the quarter template needs no other. */
function arcPath({ center, radius, fromDegrees, toDegrees }: Extract<DiagramPart, { part: 'arc' }>): string {
  const at = (degrees: number) => {
    const turn = (degrees * Math.PI) / 180;
    return `${String(center.x + radius * Math.cos(turn))} ${String(center.y + radius * Math.sin(turn))}`;
  };
  return `M ${at(fromDegrees)} A ${String(radius)} ${String(radius)} 0 0 1 ${at(toDegrees)}`;
}
