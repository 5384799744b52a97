import { useState } from 'react';
import { useSearchParams } from 'react-router';
import { assertNever } from '#core/assert-never';
import type { FabricPage } from '#core/contract/stash';
import type { FabricPiece } from '#core/domain/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import { freeWords, stockWords, thereOf } from '#renderer/features/stash/fabric-words';
import { LabelsDialog } from '#renderer/features/stash/labels-dialog';
import shared from '#renderer/features/stash/stash.module.css';
import { useDisplay } from '#renderer/ui/base/display';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { FabricWorth } from './fabric-worth';
import { holdsOf } from './holds';
import { PieceCard } from './piece-card';
import { LieDialog } from './lie-dialog';
import type { PieceAsked } from './piece-asked';
import { PieceStepDialog } from './piece-step-dialog';
import { UseDialog } from './use-dialog';
import styles from './fabric.module.css';

/** The pieces of a fabric, all drawn to one scale, with what can be done with each. */
export function FabricPieces({ opened }: { readonly opened: FabricPage }) {
  const { fabric, pieces, valueMinor, ledger } = opened;
  const { length, currency, locale } = useDisplay();
  const [asked, setAsked] = useState<PieceAsked | null>(null);
  const found = useFoundPiece(pieces);
  const shown =
    asked ??
    (found.isUsed && found.piece !== undefined ? { kind: 'use' as const, piece: found.piece } : null);
  const close = () => {
    setAsked(null);
    found.leaveUse();
  };
  const turning = useWrite('piece:set-print');
  const there = stockWords(thereOf(pieces), length);
  const free = freeWords(pieces, length) ?? 'all of it free';
  const worth =
    valueMinor === 0 ? '' : ` · worth ${formatMoney(moneyFromMinor(valueMinor, currency), locale)}`;
  const lengths = pieces.filter(({ kind }) => measureOfKind(kind) !== 'count');
  const longest = Math.max(1, ...lengths.map((piece) => piece.there));
  const widest = Math.max(1, ...lengths.map((piece) => piece.width));
  return (
    <section className={shared['stack']} aria-label="Its pieces">
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
        <p className={shared['quiet']}>No piece of it has been written down yet.</p>
      )}
      <ProblemNotice problem={turning.problem} />
      <ul className={styles['pieces']}>
        {pieces.map((piece) => (
          <PieceCard
            key={piece.id}
            piece={piece}
            swatch={fabric.swatch}
            holds={holdsOf(ledger, piece.id)}
            largest={{ longest, widest }}
            isDirectional={fabric.direction !== 'any' && measureOfKind(piece.kind) !== 'count'}
            isMarked={piece === found.piece}
            onAsk={setAsked}
            onTurnPrint={(runs) => void turning.write({ pieceId: piece.id, runs })}
          />
        ))}
      </ul>
      {shown !== null && <AskedDialog asked={shown} opened={opened} onClose={close} />}
    </section>
  );
}

interface AskedDialogProps {
  readonly asked: PieceAsked;
  readonly opened: FabricPage;
  readonly onClose: () => void;
}

function AskedDialog({ asked, opened, onClose }: AskedDialogProps) {
  switch (asked.kind) {
    case 'use':
      return <UseDialog opened={opened} piece={asked.piece} onClose={onClose} />;
    case 'lie':
      return <LieDialog piece={asked.piece} onClose={onClose} />;
    case 'label': {
      const { fabricId, id: pieceId } = asked.piece;
      return <LabelsDialog of={{ of: 'fabric', fabricId, pieceId }} onClose={onClose} />;
    }
    case 'set-aside':
    case 'release':
    case 'discard':
    case 'count':
      return <PieceStepDialog step={asked} onClose={onClose} />;
    default:
      return assertNever(asked);
  }
}

/** The piece that was found by its code, as the address says: `?piece=ID`, with `&use` when it is taken up. */
function useFoundPiece(pieces: readonly FabricPiece[]) {
  const [params, setParams] = useSearchParams();
  const leaveUse = () => {
    if (!params.has('use')) return;
    setParams(
      (before) => {
        before.delete('use');
        return before;
      },
      { replace: true },
    );
  };
  return { piece: pieces.find(({ id }) => id === params.get('piece')), isUsed: params.has('use'), leaveUse };
}
