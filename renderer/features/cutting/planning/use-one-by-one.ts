import { useEffect, useState } from 'react';

/** How many of `count` drawings are on the page: one more with each frame, so that none has to lay them all out. */
export function useOneByOne(count: number): number {
  const [drawn, setDrawn] = useState(1);
  useEffect(() => {
    if (drawn >= count) return;
    const frame = requestAnimationFrame(() => setDrawn(drawn + 1));
    return () => cancelAnimationFrame(frame);
  }, [drawn, count]);
  return Math.min(drawn, count);
}
