import { useEffect, useState } from 'react';

/** How many of `count` drawings to show: one more with each frame, so that no frame has to draw them all. */
export function useOneByOne(count: number): number {
  const [drawn, setDrawn] = useState(1);
  useEffect(() => {
    if (drawn >= count) return;
    const frame = requestAnimationFrame(() => setDrawn(drawn + 1));
    return () => cancelAnimationFrame(frame);
  }, [drawn, count]);
  return Math.min(drawn, count);
}
