import { Link } from 'react-router';
import { type FabricPiece, freeOf, type PrintRuns } from '#core/domain/stash';
import { codeOfPiece, formatPieceCode } from '#core/stash/piece-code';
import { lengthFromUnits } from '#core/units/length';
import { bookedAmount, freeAmount, overbookedWords, pieceStock } from '#renderer/features/stash/fabric-words';
import { useKindName } from '#renderer/features/stash/kind-name';
import { Typeset } from '#renderer/ui/answers/typeset';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Button } from '#renderer/ui/page/button';
import { loneCostWords } from '#renderer/text/cost-words';
import { costOfArea } from '#core/units/known-cost';
import layout from '#renderer/ui/page/layout.module.css';
import { FabricPieceActions } from './fabric-piece-actions';
import { FabricPieceDrawing } from './fabric-piece-drawing';
import styles from './fabric.module.css';
import type { Hold } from './holds';
import type { PieceAction } from './piece-action';

interface FabricPieceCardProps {
  readonly piece: FabricPiece;
  readonly swatch: string;
  readonly holds: readonly Hold[];
  readonly largest: { readonly longest: number; readonly widest: number };
  /** The print of the fabric has a direction, so it matters how the piece was cut. */
  readonly isDirectional: boolean;
  /** It was found by its code. */
  readonly isMarked: boolean;
  readonly onAction: (action: PieceAction) => void;
  readonly onTurnPrint: (runs: PrintRuns) => void;
}

/** One piece of fabric: its drawing, its size, what is set aside of it, and the actions for it. */
export function FabricPieceCard(props: FabricPieceCardProps) {
  const { piece, swatch, holds, largest, isDirectional, isMarked, onAction, onTurnPrint } = props;
  const { length } = useDisplay();
  const size = pieceStock({ ...piece, length: piece.there }, length);
  const kind = useKindName(piece);
  const name = `${kind}, ${size}`;
  return (
    <li
      className={classes(styles['piece'], isMarked && styles['marked'])}
      aria-current={isMarked || undefined}
    >
      <FabricPieceDrawing piece={piece} swatch={swatch} largest={largest} words={name} />
      <div className={styles['pieceWords']}>
        <p>
          <strong>
            <Typeset text={size} />
          </strong>{' '}
          <span className={layout['quiet']}>{kind}</span>
        </p>
        <PieceFacts piece={piece} isDirectional={isDirectional} />
        {holds.map((hold) => (
          <HoldLine
            key={hold.projectId}
            piece={piece}
            hold={hold}
            name={name}
            onRelease={() => onAction({ kind: 'release', piece, hold })}
          />
        ))}
        <FabricPieceActions
          piece={piece}
          name={name}
          isDirectional={isDirectional}
          onAction={onAction}
          onTurnPrint={onTurnPrint}
        />
      </div>
    </li>
  );
}

function PieceFacts({ piece, isDirectional }: Pick<FabricPieceCardProps, 'piece' | 'isDirectional'>) {
  const display = useDisplay();
  const { length } = display;
  const over = overbookedWords(piece, length);
  const free = freeOf(piece) > 0 ? `${freeAmount(piece, length)} free` : 'nothing free';
  const cost = loneCostWords(costOfArea(piece.valueMinor, piece.width * piece.there), display);
  const value = cost === '' ? '' : ` · ${cost}`;
  return (
    <>
      <p className={layout['quiet']}>
        <Typeset text={`${free}${value}`} />
      </p>
      {piece.place !== '' && <p className={layout['quiet']}>Stored in {piece.place}</p>}
      {isDirectional && (
        <p className={layout['quiet']}>
          {piece.printRuns === 'along' ? 'Print along its length' : 'Print across its length'}
        </p>
      )}
      <p className={styles['code']}>Code {formatPieceCode(codeOfPiece(piece.id))}</p>
      {over !== null && (
        <p className={layout['alert']}>
          <Typeset text={over} />
        </p>
      )}
    </>
  );
}

interface HoldLineProps {
  readonly piece: FabricPiece;
  readonly hold: Hold;
  readonly name: string;
  readonly onRelease: () => void;
}

function HoldLine({ piece, hold, name, onRelease }: HoldLineProps) {
  const { length } = useDisplay();
  return (
    <p className={styles['hold']}>
      <span>
        <Typeset text={`${bookedAmount({ ...piece, length: lengthFromUnits(hold.held) }, length)} for `} />
        <Link to={`/projects/${hold.projectId}`}>{hold.projectName}</Link>
      </span>
      <Button
        look="quiet"
        isSmall
        aria-label={`Release from ${hold.projectName}: ${name}`}
        onClick={onRelease}
      >
        Release
      </Button>
    </p>
  );
}
