import { type FabricPiece, freeOf, type PrintRuns } from '#core/domain/stash';
import { Button } from '#renderer/ui/page/button';
import styles from './fabric.module.css';
import type { PieceAction } from './piece-action';

interface FabricPieceActionsProps {
  readonly piece: FabricPiece;
  /** The kind and size of the piece, for the names of the buttons. */
  readonly name: string;
  readonly isDirectional: boolean;
  readonly onAction: (action: PieceAction) => void;
  readonly onTurnPrint: (runs: PrintRuns) => void;
}

/** The buttons of a piece of fabric. What needs fabric is offered only while there is some. */
export function FabricPieceActions(props: FabricPieceActionsProps) {
  const { piece, name, isDirectional, onAction, onTurnPrint } = props;
  const isThere = piece.there > 0;
  const otherWay = piece.printRuns === 'along' ? 'across' : 'along';
  const button = (verb: string, onClick: () => void, look: 'plain' | 'quiet' = 'plain') => (
    <Button look={look} isSmall aria-label={`${verb}: ${name}`} onClick={onClick}>
      {verb}
    </Button>
  );
  return (
    <div className={styles['actions']}>
      {isThere && button('Use', () => onAction({ kind: 'use', piece }))}
      {isThere && button('Set aside', () => onAction({ kind: 'set-aside', piece }))}
      {button('Move', () => onAction({ kind: 'move', piece }))}
      {isDirectional && button(`Print runs ${otherWay}`, () => onTurnPrint(otherWay))}
      {button('Count', () => onAction({ kind: 'count', piece }))}
      {freeOf(piece) > 0 && button('Throw out', () => onAction({ kind: 'discard', piece }))}
      {isThere && button('Label', () => onAction({ kind: 'label', piece }), 'quiet')}
    </div>
  );
}
