import { Link } from 'react-router';
import type { FabricPiece, PrintRuns } from '#core/domain/stash';
import { formatMoney } from '#core/units/format-money';
import { lengthFromUnits } from '#core/units/length';
import { moneyFromMinor } from '#core/units/money';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import {
  amountBooked,
  amountFree,
  freeLength,
  overbookedWords,
  pieceStock,
} from '#renderer/features/stash/fabric-words';
import { useKindName } from '#renderer/features/stash/kind-name';
import shared from '#renderer/features/stash/stash.module.css';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import type { Hold } from './holds';
import { PieceDrawing } from './piece-drawing';
import type { PieceAsked } from './piece-asked';
import styles from './fabric.module.css';

interface PieceCardProps {
  readonly piece: FabricPiece;
  readonly swatch: string;
  readonly holds: readonly Hold[];
  readonly largest: { readonly longest: number; readonly widest: number };
  /** The fabric's print has an up and a down, so that it matters how a piece lies. */
  readonly isDirectional: boolean;
  /** It was found by its code. */
  readonly isMarked: boolean;
  readonly onAsk: (asked: PieceAsked) => void;
  readonly onTurnPrint: (runs: PrintRuns) => void;
}

/** One piece: drawn, how large, what of it is spoken for and by whom. */
export function PieceCard({ piece, swatch, holds, largest, isDirectional, isMarked, ...on }: PieceCardProps) {
  const { onAsk, onTurnPrint } = on;
  const { length, currency, locale } = useDisplay();
  const size = pieceStock({ ...piece, length: piece.there }, length);
  const name = useKindName(piece);
  const over = overbookedWords(piece, length);
  const isSomeFree = freeLength(piece) > 0;
  const free = isSomeFree ? `${amountFree(piece, length)} free` : 'nothing free';
  const value =
    piece.valueMinor === 0 ? '' : ` · ${formatMoney(moneyFromMinor(piece.valueMinor, currency), locale)}`;
  const otherWay = piece.printRuns === 'along' ? 'across' : 'along';
  const named = (verb: string) => `${verb}: ${name}, ${size}`;
  return (
    <li
      className={classes(styles['piece'], isMarked && styles['marked'])}
      aria-current={isMarked || undefined}
    >
      <PieceDrawing piece={piece} swatch={swatch} largest={largest} words={`${name}, ${size}`} />
      <div className={styles['pieceWords']}>
        <p>
          <strong>
            <Typeset text={size} />
          </strong>{' '}
          <span className={shared['quiet']}>{name}</span>
        </p>
        <p className={shared['quiet']}>
          <Typeset text={`${free}${value}`} />
        </p>
        {piece.place !== '' && <p className={shared['quiet']}>Lies in {piece.place}</p>}
        {isDirectional && (
          <p className={shared['quiet']}>
            {piece.printRuns === 'along' ? 'Print along its length' : 'Print across it'}
          </p>
        )}
        <p className={styles['code']}>Code {formatPieceCode(codeOfPiece(piece.id))}</p>
        {over !== null && (
          <p className={styles['over']}>
            <Typeset text={over} />
          </p>
        )}
        {holds.map((hold) => (
          <p key={hold.projectId} className={styles['hold']}>
            <span>
              <Typeset
                text={`${amountBooked({ ...piece, length: lengthFromUnits(hold.held) }, length)} for `}
              />
              <Link to={`/projects/${hold.projectId}`}>{hold.projectName}</Link>
            </span>
            <Button
              look="quiet"
              isSmall
              aria-label={named(`Release from ${hold.projectName}`)}
              onClick={() => onAsk({ kind: 'release', piece, hold })}
            >
              Release
            </Button>
          </p>
        ))}
        <div className={styles['actions']}>
          {piece.there > 0 && (
            <Button isSmall aria-label={named('Use')} onClick={() => onAsk({ kind: 'use', piece })}>
              Use
            </Button>
          )}
          {piece.there > 0 && (
            <Button
              isSmall
              aria-label={named('Set aside')}
              onClick={() => onAsk({ kind: 'set-aside', piece })}
            >
              Set aside
            </Button>
          )}
          <Button isSmall aria-label={named('Lay elsewhere')} onClick={() => onAsk({ kind: 'lie', piece })}>
            Lay elsewhere
          </Button>
          {isDirectional && (
            <Button
              isSmall
              aria-label={named(`Print runs ${otherWay}`)}
              onClick={() => onTurnPrint(otherWay)}
            >
              Print runs {otherWay}
            </Button>
          )}
          <Button isSmall aria-label={named('Count')} onClick={() => onAsk({ kind: 'count', piece })}>
            Count
          </Button>
          {isSomeFree && (
            <Button
              isSmall
              aria-label={named('Throw away')}
              onClick={() => onAsk({ kind: 'discard', piece })}
            >
              Throw away
            </Button>
          )}
          {piece.there > 0 && (
            <Button
              look="quiet"
              isSmall
              aria-label={named('Label')}
              onClick={() => onAsk({ kind: 'label', piece })}
            >
              Label
            </Button>
          )}
        </div>
      </div>
    </li>
  );
}
