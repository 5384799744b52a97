import { useEffect } from 'react';

/** A field saves on blur, so this blurs the field in use before the window closes. Otherwise the last typed words would be lost. */
export function useFieldLeftOnClose(): void {
  useEffect(() => {
    const leave = () => {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    };
    window.addEventListener('beforeunload', leave);
    return () => window.removeEventListener('beforeunload', leave);
  }, []);
}
