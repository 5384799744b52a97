import { stashFile, type StashFile } from '#core/stash/table/stash-file';
import type { CurrencyCode } from '#core/units/money';
import { TableRefused } from './table-text';

/** Reads a stash file. Throws TableRefused with the place of the first error. */
export function readStashFile(text: string, currency: CurrencyCode): StashFile {
  const read = stashFile.safeParse(parsed(text));
  if (!read.success) {
    const [issue] = read.error.issues;
    throw new TableRefused({ why: 'not-a-stash-file', at: placeWords(issue?.path ?? []) });
  }
  if (read.data.currency !== currency) {
    throw new TableRefused({ why: 'other-currency', found: read.data.currency, expected: currency });
  }
  return read.data;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    const at = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1];
    const before = text.slice(0, at === undefined ? text.length : Number(at)).split('\n');
    throw new TableRefused({
      why: 'not-json',
      line: before.length,
      column: (before.at(-1)?.length ?? 0) + 1,
    });
  }
}

/** `fabrics[3].pieces[0].width` */
function placeWords(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === 'number' ? `[${String(part)}]` : `.${String(part)}`))
    .join('')
    .replace(/^\./, '');
}
