import { Link } from 'react-router';
import type { FabricPieceId } from '#core/domain/ids';
import { choiceWords } from '#renderer/text/choice-words';
import { LengthText } from '#renderer/ui/answers/typeset';
import { type OptionRow, OptionRows } from '#renderer/ui/fields/option-rows';
import layout from '#renderer/ui/page/layout.module.css';
import type { PieceToCut } from './pieces-to-cut';

interface PiecePickerProps {
  readonly pieces: readonly PieceToCut[];
  readonly isSearch: boolean;
  readonly chosen: FabricPieceId | null;
  readonly onChoose: (piece: FabricPieceId) => void;
}

/** The pieces of fabric to choose from, each with its size and its free length. */
export function PiecePicker({ pieces, isSearch, chosen, onChoose }: PiecePickerProps) {
  if (pieces.length === 0 && isSearch) {
    return <p className={layout['quiet']}>No fabric you can cut matches your search.</p>;
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
    <OptionRows legend="Which piece of fabric" rows={pieces.map(rowOf)} chosen={chosen} onChoose={onChoose} />
  );
}

function rowOf({ fabric, piece, free, isHeld }: PieceToCut): OptionRow<FabricPieceId> {
  return {
    value: piece.id,
    name: fabric.name,
    swatch: fabric.swatch,
    under: `${choiceWords(piece.kind)}, ${fabric.place === '' ? 'no place noted' : fabric.place}`,
    right: (
      <>
        <LengthText length={piece.width} /> × <LengthText length={piece.there} rounding="down" />
      </>
    ),
    underRight: (
      <>
        {isHeld ? 'set aside for this project, ' : ''}
        <LengthText length={free} rounding="down" /> free
      </>
    ),
  };
}
