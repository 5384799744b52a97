import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import { classes } from '#renderer/ui/base/classes';
import { useDrag } from '#renderer/ui/base/use-drag';
import { NeedleDrawing } from '#renderer/ui/drawings/progress-stitches';
import { type LineMeasure, needlePosition, type Stop, stopAt } from './stage-line';
import styles from './line-up.module.css';

interface NeedleProps {
  readonly label: string;
  /** Where it is, in words. */
  readonly valueWords: string;
  readonly stops: readonly Stop[];
  readonly stop: number;
  readonly measure: LineMeasure;
  readonly isBusy: boolean;
  /** The stop under the needle while it is dragged; null when it is let go. */
  readonly onAim: (stop: number | null) => void;
  readonly onMove: (stop: number) => void;
}

/** The needle of a project at the quilter is raised, in radians. */
const RAISED_TURN = -0.75;

/** In CSS pixels. */
interface Grip {
  /** From the pointer to the middle of the needle. */
  readonly offset: number;
  readonly position: number;
}

const KEY_STEPS: Readonly<Record<string, -1 | 1>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
};

/** The needle at a project's stage. Dragging it, or an arrow key, moves the project; Escape puts a dragged needle back. */
export function Needle(props: NeedleProps) {
  const { label, valueWords, stops, stop, measure, isBusy, onAim, onMove } = props;
  const [held, setHeld] = useState<Grip | null>(null);
  const element = useRef<HTMLDivElement>(null);
  const isRaised = held === null && stops[stop]?.state === 'out';
  const lineX = ({ clientX }: { readonly clientX: number }) =>
    clientX - (element.current?.parentElement?.getBoundingClientRect().left ?? 0);
  const letGo = () => {
    setHeld(null);
    onAim(null);
  };
  const drag = useDrag({
    onMove: (event) => {
      if (held === null) return;
      const end = needlePosition(measure, stops, stops.length - 1);
      const position = Math.min(end, Math.max(0, lineX(event) + held.offset));
      setHeld({ ...held, position });
      onAim(stopAt(measure, lineX(event)));
    },
    onDrop: (event) => {
      if (held === null) return;
      const isMoved = held.position !== needlePosition(measure, stops, stop);
      const target = stopAt(measure, lineX(event));
      letGo();
      if (isMoved && target !== stop) onMove(target);
    },
    onCancel: letGo,
  });
  const grip = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0 || isBusy) return;
    const position = needlePosition(measure, stops, stop);
    setHeld({ offset: position - lineX(event), position });
    drag.start(event);
  };
  const press = (event: KeyboardEvent) => {
    const step = KEY_STEPS[event.key];
    if (event.key === 'Escape' && held !== null) {
      drag.stop();
      letGo();
    } else if (step !== undefined && held === null) onMove(stop + step);
    else return;
    event.preventDefault();
  };
  return (
    <div
      ref={element}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation="horizontal"
      aria-valuemin={1}
      aria-valuemax={stops.length}
      aria-valuenow={stop + 1}
      aria-valuetext={valueWords}
      aria-disabled={isBusy}
      title={valueWords}
      className={classes(styles['needle'], held !== null && styles['dragged'])}
      style={{ left: held?.position ?? needlePosition(measure, stops, stop) }}
      onPointerDown={grip}
      onKeyDown={press}
    >
      <svg width={48} height={40} viewBox="-24 -20 48 40" aria-hidden>
        <NeedleDrawing at={{ x: 0, y: 0, turn: isRaised ? RAISED_TURN : 0 }} thread={4} />
      </svg>
    </div>
  );
}
