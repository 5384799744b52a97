import { type ReactNode, useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { Problem } from '#core/contract/problem';
import type { PieceWithCode } from '#core/contract/stash';
import { formatPieceCode, type PieceCode } from '#core/stash/piece-code';
import { call } from '#renderer/bridge/call';
import { labelPlace, labelSize } from '#renderer/text/label-words';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './search.module.css';

interface NotOpened {
  readonly code: PieceCode;
  readonly found: readonly PieceWithCode[];
  readonly problem: Problem | null;
}

/** Opens the piece with a code, ready to use. If there is not exactly one, a dialog says what was found. */
export function useFindByCode(): {
  readonly find: (code: PieceCode) => Promise<void>;
  readonly dialog: ReactNode;
} {
  const navigate = useNavigate();
  const [notOpened, setNotOpened] = useState<NotOpened | null>(null);
  const find = async (code: PieceCode) => {
    const answer = await call('piece:find', { code });
    const found = answer.ok ? answer.value : [];
    const [one, ...others] = found.filter(({ piece }) => piece.there > 0);
    const isOne = one !== undefined && others.length === 0;
    setNotOpened(isOne ? null : { code, found, problem: answer.ok ? null : answer.error });
    if (isOne) void navigate(addressOf(one));
  };
  const dialog = notOpened !== null && <FoundDialog {...notOpened} onClose={() => setNotOpened(null)} />;
  return { find, dialog };
}

/** The page of a piece, with the dialog for using it open; for a piece that is used up, only the page. */
function addressOf({ piece, fabric }: PieceWithCode): string {
  return piece.there > 0 ? `/stash/${fabric.id}?piece=${piece.id}&use` : `/stash/${fabric.id}`;
}

function FoundDialog({ code, found, problem, onClose }: NotOpened & { readonly onClose: () => void }) {
  return (
    <Dialog
      title={formatPieceCode(code)}
      onClose={onClose}
      foot={
        <Button look="main" onClick={onClose}>
          Close
        </Button>
      }
    >
      {problem === null ? (
        <CodedPieces code={code} found={found} onGo={onClose} />
      ) : (
        <ProblemNotice problem={problem} />
      )}
    </Dialog>
  );
}

interface CodedPiecesProps {
  readonly code: PieceCode;
  readonly found: readonly PieceWithCode[];
  readonly onGo?: () => void;
}

/** The pieces with a code, each with a link; if there is none, the likely reason. */
export function CodedPieces({ code, found, onGo }: CodedPiecesProps) {
  const { length } = useDisplay();
  if (found.length === 0) {
    return (
      <p>
        No piece in your stash has the code {formatPieceCode(code)}. The label may be from another notebook,
        or the purchase was undone.
      </p>
    );
  }
  return (
    <ul className={styles['coded']} aria-label={`Pieces with the code ${formatPieceCode(code)}`}>
      {found.map((one) => {
        const { piece, fabric } = one;
        const isThere = piece.there > 0;
        const place = labelPlace(one);
        const facts = [labelSize(one, length), place === '' ? '' : `stored in ${place}`];
        return (
          <li key={piece.id}>
            <strong>{fabric.name}</strong>{' '}
            {isThere ? (
              <Typeset text={facts.filter((fact) => fact !== '').join(', ')} />
            ) : (
              'This piece is used up.'
            )}{' '}
            <Link to={addressOf(one)} onClick={onGo}>
              {isThere ? 'Use it' : 'Open its ledger'}
            </Link>
          </li>
        );
      })}
    </ul>
  );
}
