import { useEffect } from 'react';

/** A sheet for paper, chosen by the rest of the address. Its title says when everything on it is drawn. */
export function SheetPage() {
  useEffect(() => {
    document.title = 'Sheet ready';
  }, []);
  return <article />;
}
