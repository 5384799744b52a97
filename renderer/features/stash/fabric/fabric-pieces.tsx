import { useState } from 'react';
import { useSearchParams } from 'react-router';
import { assertNever } from '#core/assert-never';
import type { FabricPage } from '#core/contract/stash';
import type { FabricPiece } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import { useWrite } from '#renderer/bridge/query';
import { freeWords, stockWords, stockOf } from '#renderer/features/stash/fabric-words';
import { LabelsDialog } from '#renderer/features/stash/labels-dialog';
import { costWords } from '#renderer/text/cost-words';
import layout from '#renderer/ui/page/layout.module.css';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { FabricWorth } from './fabric-worth';
import { holdsOf } from './holds';
import { FabricPieceCard } from './fabric-piece-card';
import { MoveFabricDialog } from './move-fabric-dialog';
import type { PieceAction } from './piece-action';
import { PieceStepDialog } from './piece-step-dialog';
import { UseDialog } from './use-dialog';
import styles from './fabric.module.css';

/** The pieces of a fabric, all drawn to one scale, with the actions for each. */
export function FabricPieces({ opened }: { readonly opened: FabricPage }) {
  const { fabric, pieces, value, ledger } = opened;
  const display = useDisplay();
  const { length } = display;
  const [chosen, setChosen] = useState<PieceAction | null>(null);
  const found = useFoundPiece(pieces);
  const shown =
    chosen ??
    (found.opensUse && found.piece !== undefined ? { kind: 'use' as const, piece: found.piece } : null);
  const close = () => {
    setChosen(null);
    found.clearUse();
  };
  const turning = useWrite('piece:set-print');
  const there = stockWords(stockOf(pieces), length);
  const free = freeWords(pieces, length) ?? 'all of it free';
  const worth = value.minor === 0 ? '' : ` · worth ${costWords(value, display)}`;
  const lengths = pieces.filter(({ kind }) => measureOfKind(kind) !== 'count');
  const longest = Math.max(1, ...lengths.map((piece) => piece.there));
  const widest = Math.max(1, ...lengths.map((piece) => piece.width));
  return (
    <section className={layout['stack']} aria-label="Pieces of this fabric">
      <p className={styles['hero']}>
        <Typeset text={there === '' ? 'Used up' : there} />
      </p>
      {there !== '' && (
        <p className={styles['heroUnder']}>
          <Typeset text={`${free}${worth}`} />
        </p>
      )}
      <FabricWorth opened={opened} />
      {there === '' && ledger.length === 0 && (
        <p className={layout['quiet']}>No pieces of this fabric yet.</p>
      )}
      <ProblemNotice problem={turning.problem} />
      <ul className={layout['lines']}>
        {pieces.map((piece) => (
          <FabricPieceCard
            key={piece.id}
            piece={piece}
            swatch={fabric.swatch}
            holds={holdsOf(ledger, piece.id)}
            largest={{ longest, widest }}
            isDirectional={fabric.direction !== 'any' && measureOfKind(piece.kind) !== 'count'}
            isMarked={piece === found.piece}
            onAction={setChosen}
            onTurnPrint={(runs) => void turning.write({ pieceId: piece.id, runs })}
          />
        ))}
      </ul>
      {shown !== null && <ActionDialog action={shown} opened={opened} onClose={close} />}
    </section>
  );
}

interface ActionDialogProps {
  readonly action: PieceAction;
  readonly opened: FabricPage;
  readonly onClose: () => void;
}

function ActionDialog({ action, opened, onClose }: ActionDialogProps) {
  switch (action.kind) {
    case 'use':
      return <UseDialog opened={opened} piece={action.piece} onClose={onClose} />;
    case 'move':
      return <MoveFabricDialog piece={action.piece} onClose={onClose} />;
    case 'label': {
      const { fabricId, id: pieceId } = action.piece;
      return <LabelsDialog of={{ of: 'fabric', fabricId, pieceId }} onClose={onClose} />;
    }
    case 'set-aside':
    case 'release':
    case 'discard':
    case 'count':
      return <PieceStepDialog step={action} onClose={onClose} />;
    default:
      return assertNever(action);
  }
}

/** The piece in the page's address, found by its code: `?piece=ID`, with `&use` to open the dialog for using it. */
function useFoundPiece(pieces: readonly FabricPiece[]) {
  const [params, setParams] = useSearchParams();
  const clearUse = () => {
    if (!params.has('use')) return;
    setParams(
      (before) => {
        before.delete('use');
        return before;
      },
      { replace: true },
    );
  };
  return {
    piece: pieces.find(({ id }) => id === params.get('piece')),
    opensUse: params.has('use'),
    clearUse,
  };
}
