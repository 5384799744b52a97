import { HaloText } from './halo-text';
import styles from './diagram.module.css';

interface Place {
  readonly x: number;
  readonly y: number;
}

interface DimensionLineProps {
  /** The measured points, in drawing pixels. */
  readonly from: Place;
  readonly to: Place;
  /** Pixels to the left of the line from `from` to `to`. */
  readonly offset: number;
  readonly text: string;
}

const TICK = 4;
const OVERRUN = 4;

/** A measured length as on a pattern sheet: two extension lines, a line between them with a slanted tick at each end, and its text. */
export function DimensionLine({ from, to, offset, text }: DimensionLineProps) {
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  if (size === 0) return null;
  const along = { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
  const out = { x: along.y, y: -along.x };
  const move = (point: Place, by: number): Place => ({ x: point.x + out.x * by, y: point.y + out.y * by });
  const [a, b] = [move(from, offset), move(to, offset)];
  const reach = offset + Math.sign(offset === 0 ? 1 : offset) * OVERRUN;
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return (
    <g className={styles['dimension']}>
      {offset !== 0 &&
        [from, to].map((point, end) => (
          <Line key={end} from={point} to={move(point, reach)} name="extension" />
        ))}
      <Line from={a} to={b} name="measure" />
      {[a, b].map((point, end) => (
        <Line
          key={end}
          from={{ x: point.x - (along.x - out.x) * TICK, y: point.y - (along.y - out.y) * TICK }}
          to={{ x: point.x + (along.x - out.x) * TICK, y: point.y + (along.y - out.y) * TICK }}
          name="tick"
        />
      ))}
      <HaloText
        at={middle}
        text={text}
        transform={`rotate(${String(readableAngle(along))} ${String(middle.x)} ${String(middle.y)})`}
      />
    </g>
  );
}

function Line({ from, to, name }: { readonly from: Place; readonly to: Place; readonly name: string }) {
  return <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} className={styles[name]} />;
}

/** Turns text along its line, but never upside down. */
function readableAngle(along: Place): number {
  const degrees = (Math.atan2(along.y, along.x) * 180) / Math.PI;
  if (degrees > 90) return degrees - 180;
  return degrees <= -90 + 1e-9 && degrees !== -90 ? degrees + 180 : degrees;
}
