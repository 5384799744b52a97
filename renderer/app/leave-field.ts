import { useEffect } from 'react';

/**
 * A field keeps what was typed when it is left. When the window closes with the caret still in one, it is left first, so that
 * the last words typed are kept like all others.
 */
export function useFieldLeftOnClose(): void {
  useEffect(() => {
    const leave = () => {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    };
    window.addEventListener('beforeunload', leave);
    return () => window.removeEventListener('beforeunload', leave);
  }, []);
}
