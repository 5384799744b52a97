import type { PieceCode } from '#core/stash/piece-code';
import { useRead } from '#renderer/bridge/query';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { CodedPieces } from './find-by-code';

interface FoundByCodeProps {
  /** Null if the text looks like a code but its check character is wrong. */
  readonly code: PieceCode | null;
  /** The same text finds fabrics too; then a code without a piece is not mentioned. */
  readonly findsFabrics: boolean;
}

/** The piece whose code was typed into the search field. */
export function FoundByCode({ code, findsFabrics }: FoundByCodeProps) {
  if (code !== null) return <Coded code={code} findsFabrics={findsFabrics} />;
  if (findsFabrics) return null;
  return (
    <EmptyState title="No fabric found">
      <p>
        If this is a code, one of its characters differs from the label: check it again. A scanner must use
        the same keyboard layout as this computer.
      </p>
    </EmptyState>
  );
}

function Coded({ code, findsFabrics }: { readonly code: PieceCode; readonly findsFabrics: boolean }) {
  const found = useRead('piece:find', { code }).value;
  if (found === undefined || (findsFabrics && found.length === 0)) return null;
  return <CodedPieces code={code} found={found} />;
}
