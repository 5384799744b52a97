import { Link } from 'react-router';
import type { FabricPieceId } from '#core/domain/ids';
import { choiceWords } from '#renderer/text/choice-words';
import { LengthText } from '#renderer/ui/answers/typeset';
import type { PieceToCut } from './pieces-to-cut';
import styles from './piece-picker.module.css';

interface PiecePickerProps {
  readonly pieces: readonly PieceToCut[];
  readonly isSearch: boolean;
  readonly chosen: FabricPieceId | null;
  readonly onChoose: (piece: FabricPieceId) => void;
}

/** The pieces of fabric to choose from, each with its size and its free length; arrow keys move between them. */
export function PiecePicker({ pieces, isSearch, chosen, onChoose }: PiecePickerProps) {
  if (pieces.length === 0 && isSearch) {
    return <p className={styles['quiet']}>No fabric you can cut matches your search.</p>;
  }
  if (pieces.length === 0) {
    return (
      <p>
        There is no fabric in your stash to cut from. <Link to="/stash?new">Add fabric</Link> with its first
        piece, then record the cut here.
      </p>
    );
  }
  return (
    <fieldset className={styles['picker']}>
      <legend className={styles['quiet']}>Which piece of fabric</legend>
      {pieces.map(({ fabric, piece, free, isHeld }) => (
        <label key={piece.id} className={styles['option']}>
          <input
            type="radio"
            name="piece"
            checked={piece.id === chosen}
            onChange={() => onChoose(piece.id)}
          />
          <span className={styles['swatch']} style={{ background: fabric.swatch }} />
          <span className={styles['name']}>
            {fabric.name}
            <span className={styles['quiet']}>
              {choiceWords(piece.kind)}, {fabric.place === '' ? 'no place noted' : fabric.place}
            </span>
          </span>
          <span className={styles['size']}>
            <LengthText length={piece.width} /> × <LengthText length={piece.there} rounding="down" />
            <span className={styles['quiet']}>
              {isHeld ? 'set aside for this project, ' : ''}
              <LengthText length={free} rounding="down" /> free
            </span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
