import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element in CSS pixels, also after it changes; `before` until it is measured. */
export function useWidth<Element extends HTMLElement>(
  before: number,
): readonly [RefObject<Element | null>, number] {
  const frame = useRef<Element>(null);
  const [width, setWidth] = useState(before);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [frame, width];
}
