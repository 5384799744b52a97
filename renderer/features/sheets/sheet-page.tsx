import type { ReactElement } from 'react';
import { useParams, useSearchParams } from 'react-router';
import { EmptySheet } from './paper/empty-sheet';
import { SHEETS } from './sheets';

/** A sheet for paper, as the rest of the address asks for it. */
export function SheetPage() {
  const [search] = useSearchParams();
  return (
    drawSheet(useParams()['*'] ?? '', search) ?? <EmptySheet paper="a4">There is no such sheet.</EmptySheet>
  );
}

/** The sheet that an address asks for, on A4 unless it names another paper; null for an address that names no sheet. */
export function drawSheet(address: string, search: URLSearchParams): ReactElement | null {
  const [name = '', ...path] = address.split('/');
  const sheet = Object.hasOwn(SHEETS, name) ? SHEETS[name] : undefined;
  return sheet?.({ path, search }, search.get('paper') === 'letter' ? 'letter' : 'a4') ?? null;
}
