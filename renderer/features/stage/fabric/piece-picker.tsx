import { Link } from 'react-router';
import type { FabricPieceId } from '#core/domain/ids';
import { choiceWords } from '#renderer/text/choice-words';
import { LengthText } from '#renderer/ui/answers/typeset';
import type { PieceOption } from './piece-option';
import styles from './piece-picker.module.css';

interface PiecePickerProps {
  readonly options: readonly PieceOption[];
  readonly isSearch: boolean;
  readonly chosen: FabricPieceId | null;
  readonly onChoose: (piece: FabricPieceId) => void;
}

/** The pieces of fabric that could be cut, each with its size and what is free of it; arrow keys move among them. */
export function PiecePicker({ options, isSearch, chosen, onChoose }: PiecePickerProps) {
  if (options.length === 0 && isSearch) {
    return <p className={styles['quiet']}>Nothing in the stash that can be cut is called that.</p>;
  }
  if (options.length === 0) {
    return (
      <p>
        There is no fabric in the stash to cut from. <Link to="/stash?new">Add a fabric</Link> with its first
        piece, then book the cut here.
      </p>
    );
  }
  return (
    <fieldset className={styles['picker']}>
      <legend className={styles['quiet']}>Which piece of fabric</legend>
      {options.map(({ fabric, piece, free, isHeld }) => (
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
              {isHeld ? 'set aside for this, ' : ''}
              <LengthText length={free} rounding="down" /> free
            </span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
