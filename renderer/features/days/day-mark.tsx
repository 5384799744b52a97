import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { addDays, type CalendarDate, daysBetween } from '#core/units/calendar-date';
import { farWords, weekdayWords } from '#renderer/text/dates';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { useDrag } from '#renderer/ui/base/use-drag';
import type { Mark, Scale } from './calendar-rows';
import styles from './days.module.css';

interface DayMarkProps {
  readonly kind: 'due' | 'back';
  /** The project and the kind of day, for a screen reader. */
  readonly label: string;
  /** The word on the flag. */
  readonly flag: string;
  readonly mark: Mark;
  readonly isLate?: boolean;
  readonly scale: Scale;
  readonly dayWidth: number;
  readonly on: CalendarDate;
  readonly onMove: (mark: Mark) => void;
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -7,
  PageUp: 7,
};

/** A day that moves by dragging or with the arrow keys (Page keys by a week; Escape undoes it). A ghost marks the saved day. */
export function DayMark({
  kind,
  label,
  flag,
  mark,
  isLate = false,
  scale,
  dayWidth,
  on,
  onMove,
}: DayMarkProps) {
  const { locale } = useDisplay();
  /** The pointer's place and the mark's, in CSS pixels and days, when it was taken. */
  const grip = useRef({ x: 0, place: 0 });
  const place = daysBetween(scale.from, mark.on);
  const savedPlace = daysBetween(scale.from, mark.savedOn);
  const isMoved = mark.on !== mark.savedOn;
  const moveTo = (to: number) => {
    const day = addDays(scale.from, Math.min(scale.days - 1, Math.max(0, to)));
    if (day !== mark.on) onMove({ ...mark, on: day });
  };
  const dragTo = ({ clientX }: { readonly clientX: number }) =>
    moveTo(grip.current.place + Math.round((clientX - grip.current.x) / dayWidth));
  const drag = useDrag({ onMove: dragTo, onDrop: dragTo });
  const take = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0) return;
    grip.current = { x: event.clientX, place };
    drag.start(event);
  };
  const press = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (event.key === 'Escape' && isMoved) onMove({ ...mark, on: mark.savedOn });
    else if (step !== undefined) moveTo(place + step);
    else return;
    event.preventDefault();
  };
  const day = weekdayWords(mark.on, locale, on);
  return (
    <>
      {isMoved && <span className={styles['ghost']} style={{ '--at': savedPlace }} aria-hidden />}
      <div
        role="slider"
        tabIndex={0}
        aria-label={label}
        aria-orientation="horizontal"
        aria-valuemin={0}
        aria-valuemax={scale.days - 1}
        aria-valuenow={Math.max(0, place)}
        aria-valuetext={`${day}, ${farWords(mark.on, on)}${isMoved ? `, was ${weekdayWords(mark.savedOn, locale, on)}` : ''}`}
        title={`${flag} ${day}`}
        className={classes(
          styles['mark'],
          styles[kind],
          isLate && styles['lateMark'],
          isMoved && styles['movedMark'],
        )}
        style={{ '--at': Math.max(0, place) }}
        onPointerDown={take}
        onKeyDown={press}
      >
        <span className={styles['flag']}>{flag}</span>
      </div>
    </>
  );
}
