import { useState } from 'react';
import type { FabricPage } from '#core/contract/stash';
import { measureOfKind } from '#core/domain/stash-kind';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useWrite } from '#renderer/bridge/query';
import { useDisplay } from '#renderer/ui/display';
import { ProblemNotice } from '#renderer/ui/problem-notice';
import { Typeset } from '#renderer/ui/typeset';
import { freeWords, stockWords, thereOf } from './cloth-words';
import { FabricWorth } from './fabric-worth';
import { holdsOf } from './holds';
import { PieceCard } from './piece-card';
import { LieDialog } from './lie-dialog';
import type { PieceAsked } from './piece-asked';
import { PieceStepDialog } from './piece-step-dialog';
import styles from './fabric.module.css';
import shared from './stash.module.css';

/** The pieces of a fabric, all drawn to one scale, with what can be done with each. */
export function FabricPieces({ opened }: { readonly opened: FabricPage }) {
  const { fabric, pieces, valueMinor, ledger } = opened;
  const { length, currency, locale } = useDisplay();
  const [asked, setAsked] = useState<PieceAsked | null>(null);
  const turning = useWrite('piece:set-print');
  const there = stockWords(thereOf(pieces), length);
  const free = freeWords(pieces, length) ?? 'all of it free';
  const worth =
    valueMinor === 0 ? '' : ` · worth ${formatMoney(moneyFromMinor(valueMinor, currency), locale)}`;
  const cloth = pieces.filter(({ kind }) => measureOfKind(kind) !== 'count');
  const longest = Math.max(1, ...cloth.map((piece) => piece.there));
  const widest = Math.max(1, ...cloth.map((piece) => piece.width));
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
            onAsk={setAsked}
            onTurnPrint={(runs) => void turning.write({ pieceId: piece.id, runs })}
          />
        ))}
      </ul>
      {asked !== null &&
        (asked.kind === 'lie' ? (
          <LieDialog piece={asked.piece} onClose={() => setAsked(null)} />
        ) : (
          <PieceStepDialog step={asked} onClose={() => setAsked(null)} />
        ))}
    </section>
  );
}
