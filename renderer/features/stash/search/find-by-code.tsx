import { type ReactNode, useState } from 'react';
import { Link, useNavigate } from 'react-router';
import type { Problem } from '#core/contract/problem';
import type { CodedPiece } from '#core/contract/stash';
import { formatPieceCode, type PieceCode } from '#core/stash/piece-code';
import { call } from '#renderer/bridge/call';
import styles from '#renderer/features/stash/stash.module.css';
import { labelPlace, labelSize } from '#renderer/text/label-words';
import { Button } from '#renderer/ui/page/button';
import { Dialog } from '#renderer/ui/page/dialog';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';

interface Missed {
  readonly code: PieceCode;
  readonly found: readonly CodedPiece[];
  readonly problem: Problem | null;
}

/** Goes to the piece with a code, ready to use; where there is not one such piece, the dialog says what there is instead. */
export function useFindByCode(): {
  readonly find: (code: PieceCode) => Promise<void>;
  readonly dialog: ReactNode;
} {
  const navigate = useNavigate();
  const [missed, setMissed] = useState<Missed | null>(null);
  const find = async (code: PieceCode) => {
    const answer = await call('piece:find', { code });
    const found = answer.ok ? answer.value : [];
    const [one, ...others] = found.filter(({ piece }) => piece.there > 0);
    const isOne = one !== undefined && others.length === 0;
    setMissed(isOne ? null : { code, found, problem: answer.ok ? null : answer.error });
    if (isOne) void navigate(addressOf(one));
  };
  const dialog = missed !== null && <MissedDialog {...missed} onClose={() => setMissed(null)} />;
  return { find, dialog };
}

/** Where a piece is found by its code: ready to use; of one that is used up, the ledger. */
function addressOf({ piece, fabric }: CodedPiece): string {
  return piece.there > 0 ? `/stash/${fabric.id}?piece=${piece.id}&use` : `/stash/${fabric.id}`;
}

function MissedDialog({ code, found, problem, onClose }: Missed & { readonly onClose: () => void }) {
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
  readonly found: readonly CodedPiece[];
  readonly onGo?: () => void;
}

/** What bears a code, each with the way to it; where nothing does, what may be the reason. */
export function CodedPieces({ code, found, onGo }: CodedPiecesProps) {
  const { length } = useDisplay();
  if (found.length === 0) {
    return (
      <p>
        No piece of the stash has the code {formatPieceCode(code)}. The label may be of another notebook, or
        what was bought was taken back.
      </p>
    );
  }
  return (
    <ul className={styles['coded']} aria-label={`With the code ${formatPieceCode(code)}`}>
      {found.map((one) => {
        const { piece, fabric } = one;
        const isThere = piece.there > 0;
        const place = labelPlace(one);
        const facts = [labelSize(one, length), place === '' ? '' : `lies in ${place}`];
        return (
          <li key={piece.id}>
            <strong>{fabric.name}</strong>{' '}
            {isThere ? (
              <Typeset text={facts.filter((fact) => fact !== '').join(', ')} />
            ) : (
              'Nothing is left of this piece.'
            )}{' '}
            <Link to={addressOf(one)} onClick={onGo}>
              {isThere ? 'Use it' : 'See its ledger'}
            </Link>
          </li>
        );
      })}
    </ul>
  );
}
