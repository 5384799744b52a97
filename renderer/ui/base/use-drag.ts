import { type PointerEvent as ReactPointerEvent, useEffect, useEffectEvent, useState } from 'react';

interface DragHandlers {
  readonly onMove: (event: PointerEvent) => void;
  readonly onDrop: (event: PointerEvent) => void;
  readonly onCancel?: () => void;
}

interface Drag {
  /** For the pointerdown event of what is dragged. */
  readonly start: (event: ReactPointerEvent<HTMLElement>) => void;
  /** Ends the drag without a drop. */
  readonly stop: () => void;
}

/**
 * Follows a pointer from the press to its release. It listens on the whole window: the system may take the pointer capture away in the
 * middle of a drag, for instance when another window opens, and the element then gets no more moves.
 */
export function useDrag({ onMove, onDrop, onCancel }: DragHandlers): Drag {
  const [pointer, setPointer] = useState<number | null>(null);
  const move = useEffectEvent(onMove);
  const drop = useEffectEvent(onDrop);
  const cancel = useEffectEvent(() => onCancel?.());
  useEffect(() => {
    if (pointer === null) return;
    const listening = new AbortController();
    const listen = (
      type: 'pointermove' | 'pointerup' | 'pointercancel',
      act: (event: PointerEvent) => void,
    ) => {
      const heard = (event: PointerEvent) => {
        if (event.pointerId === pointer) act(event);
      };
      window.addEventListener(type, heard, { signal: listening.signal });
    };
    listen('pointermove', (event) => move(event));
    listen('pointerup', (event) => {
      setPointer(null);
      drop(event);
    });
    listen('pointercancel', () => {
      setPointer(null);
      cancel();
    });
    return () => listening.abort();
  }, [pointer]);
  return {
    start: (event) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      setPointer(event.pointerId);
    },
    stop: () => setPointer(null),
  };
}
