import { fabricOf, type CuttingLine, type CuttingSetup } from '#core/domain/cutting-setup';
import type { FabricPieceId } from '#core/domain/ids';
import type { FabricPiece } from '#core/domain/stash';
import { countOfLength } from '#core/domain/stash-kind';
import { choiceWords } from '#renderer/text/choice-words';
import { counted, patchLabel, sizeWords } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import { type FabricOnShelf, cuttablePieces, freeToCut, type Shelf } from '../planning/job-of-setup';
import { type PatchGroup } from './setup-changes';
import styles from '../cutting.module.css';

interface PatchGroupProps {
  readonly group: PatchGroup;
  readonly setup: CuttingSetup;
  readonly shelf: Shelf;
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
  readonly onChangeLine: (line: CuttingLine) => void;
  readonly onChooseFabric: () => void;
  readonly onPiece: (piece: FabricPieceId, mayBeCut: boolean) => void;
  readonly onOnlyPiece: (piece: FabricPieceId, pieces: readonly FabricPieceId[]) => void;
}

/** The patches of one fabric of a list, what stands for it in the stash, and which pieces of that may be cut. */
export function PatchGroupView(props: PatchGroupProps) {
  const { group, setup, shelf } = props;
  const fabricId = fabricOf(setup, group) ?? null;
  const onShelf = fabricId === null ? undefined : shelf.fabrics.get(fabricId);
  const isSame = onShelf?.fabric.name.toLowerCase() === group.fabric.toLowerCase();
  return (
    <section className={styles['group']} aria-label={group.fabric}>
      <div className={styles['groupHead']}>
        <span
          className={classes(styles['swatch'], onShelf === undefined && styles['noSwatch'])}
          {...(onShelf === undefined ? {} : { style: { background: onShelf.fabric.swatch } })}
        />
        <div className={styles['groupName']}>
          <h3>{group.fabric}</h3>
          <p className={styles['quiet']}>
            {onShelf === undefined
              ? 'planned as new fabric'
              : isSame
                ? 'from the stash'
                : `from ${onShelf.fabric.name}`}
          </p>
        </div>
        <Button
          look="quiet"
          isSmall
          aria-label={`Choose the fabric for ${group.fabric}`}
          onClick={props.onChooseFabric}
        >
          {onShelf === undefined ? 'Choose fabric' : 'Change'}
        </Button>
      </div>
      <ul className={styles['patches']}>
        {group.lines.map((line) => (
          <Line key={line.id} line={line} {...props} />
        ))}
      </ul>
      {onShelf !== undefined && <Pieces onShelf={onShelf} {...props} />}
    </section>
  );
}

function Line({
  line,
  setup,
  spotlight,
  onSpotlight,
  onChangeLine,
}: PatchGroupProps & { readonly line: CuttingLine }) {
  const { length } = useDisplay();
  const label = patchLabel(setup.lines.findIndex(({ id }) => id === line.id));
  const size = sizeWords(line, length);
  return (
    <li
      className={classes(styles['patchLine'], spotlight === line.id && styles['lit'])}
      onMouseEnter={() => onSpotlight(line.id)}
      onMouseLeave={() => onSpotlight(null)}
      onFocus={() => onSpotlight(line.id)}
      onBlur={() => onSpotlight(null)}
    >
      <span className={styles['letter']}>{label}</span>
      <span className={styles['patchWords']}>
        <Typeset text={`${String(line.count)} of ${size}`} />
        {!line.mayTurn && <span className={styles['quiet']}> upright</span>}
      </span>
      <Button
        look="quiet"
        isSmall
        aria-label={`Change ${label}, ${String(line.count)} of ${size}`}
        onClick={() => onChangeLine(line)}
      >
        Change
      </Button>
    </li>
  );
}

/** The pieces of the fabric, each to be cut or left alone: so one piece is swapped for another. */
function Pieces({
  onShelf,
  setup,
  shelf,
  onPiece,
  onOnlyPiece,
}: PatchGroupProps & { readonly onShelf: FabricOnShelf }) {
  const { length } = useDisplay();
  const pieces = cuttablePieces(onShelf, shelf.ownHolds);
  if (pieces.length === 0) return <p className={styles['quiet']}>None of it is free to be cut.</p>;
  const allowed = pieces.filter(({ id }) => !setup.leftOut.includes(id)).length;
  const words = (piece: FabricPiece) => {
    const { kind, width, unitLength } = piece;
    const free = freeToCut(piece, shelf.ownHolds);
    const sheets = unitLength === null ? '' : `${String(countOfLength(free, unitLength))} of `;
    return `${choiceWords(kind)}, ${sheets}${sizeWords({ width, length: unitLength ?? free }, length)}`;
  };
  return (
    <details className={styles['pieces']}>
      <summary>
        {allowed === pieces.length
          ? `${counted(pieces.length, 'piece')} may be cut`
          : `${String(allowed)} of ${counted(pieces.length, 'piece')} may be cut`}
      </summary>
      <ul className={styles['plain']}>
        {pieces.map((piece) => (
          <li key={piece.id} className={styles['pieceRow']}>
            <label className={styles['pieceTick']}>
              <input
                type="checkbox"
                checked={!setup.leftOut.includes(piece.id)}
                onChange={(event) => onPiece(piece.id, event.target.checked)}
              />
              <span>
                <Typeset text={words(piece)} />
                {piece.held > 0 && <span className={styles['quiet']}> free of what others hold</span>}
              </span>
            </label>
            {pieces.length > 1 && (
              <Button
                look="quiet"
                isSmall
                aria-label={`Cut from this piece only: ${words(piece)}`}
                onClick={() =>
                  onOnlyPiece(
                    piece.id,
                    pieces.map(({ id }) => id),
                  )
                }
              >
                Only this
              </Button>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}
