import { fabricOf, type CuttingLine, type CuttingSetup } from '#core/domain/cutting-setup';
import type { FabricPieceId } from '#core/domain/ids';
import type { FabricPiece } from '#core/domain/stash';
import { countOfLength } from '#core/domain/stash-kind';
import { choiceWords } from '#renderer/text/choice-words';
import { counted, patchLabel } from '#renderer/text/cut-words';
import { sizeWords } from '#renderer/text/size-words';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { Typeset } from '#renderer/ui/answers/typeset';
import { type FabricInStash, cuttablePieces, freeToCut, type PlanStash } from '../planning/job-of-setup';
import { type PatchGroup } from './setup-changes';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './desk.module.css';

interface PatchGroupProps {
  readonly group: PatchGroup;
  readonly setup: CuttingSetup;
  readonly stash: PlanStash;
  readonly spotlight: string | null;
  readonly onSpotlight: (key: string | null) => void;
  readonly onChangeLine: (line: CuttingLine) => void;
  readonly onChooseFabric: () => void;
  readonly onPiece: (piece: FabricPieceId, mayBeCut: boolean) => void;
  readonly onOnlyPiece: (piece: FabricPieceId, pieces: readonly FabricPieceId[]) => void;
}

/** The patches of one fabric of a list, the fabric of the stash they are cut from, and the pieces of it that may be cut. */
export function PatchGroupView(props: PatchGroupProps) {
  const { group, setup, stash } = props;
  const fabricId = fabricOf(setup, group) ?? null;
  const inStash = fabricId === null ? undefined : stash.fabrics.get(fabricId);
  const isSame = inStash?.fabric.name.toLowerCase() === group.fabric.toLowerCase();
  return (
    <section className={styles['group']} aria-label={group.fabric}>
      <div className={styles['groupHead']}>
        <span
          className={classes(styles['swatch'], inStash === undefined && styles['noSwatch'])}
          {...(inStash === undefined ? {} : { style: { background: inStash.fabric.swatch } })}
        />
        <div className={styles['groupName']}>
          <h3>{group.fabric}</h3>
          <p className={layout['quiet']}>
            {inStash === undefined
              ? 'to buy new'
              : isSame
                ? 'from your stash'
                : `from ${inStash.fabric.name}`}
          </p>
        </div>
        <Button
          look="quiet"
          isSmall
          aria-label={`Choose the fabric for ${group.fabric}`}
          onClick={props.onChooseFabric}
        >
          {inStash === undefined ? 'Choose fabric' : 'Change'}
        </Button>
      </div>
      <ul className={styles['patches']}>
        {group.lines.map((line) => (
          <Line key={line.id} line={line} {...props} />
        ))}
      </ul>
      {inStash !== undefined && <Pieces inStash={inStash} {...props} />}
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
      <span>
        <Typeset text={`${String(line.count)} of ${size}`} />
        {!line.mayTurn && <span className={layout['quiet']}> not turned</span>}
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

/** The pieces of the fabric; each may be cut or is left alone. */
function Pieces({
  inStash,
  setup,
  stash,
  onPiece,
  onOnlyPiece,
}: PatchGroupProps & { readonly inStash: FabricInStash }) {
  const { length } = useDisplay();
  const pieces = cuttablePieces(inStash, stash.ownHolds);
  if (pieces.length === 0) return <p className={layout['quiet']}>None of it is free to cut.</p>;
  const allowed = pieces.filter(({ id }) => !setup.leftOut.includes(id)).length;
  const words = (piece: FabricPiece) => {
    const { kind, width, unitLength } = piece;
    const free = freeToCut(piece, stash.ownHolds);
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
      <ul>
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
                {piece.held > 0 && (
                  <span className={layout['quiet']}> free (the rest is set aside for other projects)</span>
                )}
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
