import type { PieceCode } from '#core/stash/piece-code';
import { useRead } from '#renderer/bridge/query';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { CodedPieces } from './find-by-code';

interface FoundByCodeProps {
  /** Null where what was typed looks like a code, but its check does not come out. */
  readonly code: PieceCode | null;
  /** Fabrics were found by the same word: a code that is none goes without saying then. */
  readonly isWord: boolean;
}

/** The piece whose code was typed into the search. */
export function FoundByCode({ code, isWord }: FoundByCodeProps) {
  if (code !== null) return <Coded code={code} isWord={isWord} />;
  if (isWord) return null;
  return (
    <EmptyState title="Nothing by that word">
      <p>
        If it is a code, one of its characters is not as on the label: read it again. A scanner has to be set
        to the letters of this keyboard.
      </p>
    </EmptyState>
  );
}

function Coded({ code, isWord }: { readonly code: PieceCode; readonly isWord: boolean }) {
  const found = useRead('piece:find', { code }).value;
  if (found === undefined || (isWord && found.length === 0)) return null;
  return <CodedPieces code={code} found={found} />;
}
