import type { JobPlan, PiecePlan } from '#core/cutting/cutting-job';
import type { ClothPieceId } from '#core/domain/ids';
import type { Fabric } from '#core/domain/stash';
import { choiceWords } from '#renderer/text/choice-words';
import { Button } from '#renderer/ui/button';
import { CutLayout, type LayoutPatch } from '#renderer/ui/cut-layout';
import { useDisplay } from '#renderer/ui/display';
import { Typeset } from '#renderer/ui/typeset';
import { patchLabel } from './job-of-setup';
import type { PlanProps } from './plan-props';
import { counted, sizeWords } from './plan-words';
import { withPiece } from './setup-changes';
import { nameOfCloth } from './to-buy';
import styles from './cutting.module.css';

/** Every piece of cloth the plan cuts, drawn to scale. */
export function PlanPieces(props: PlanProps & { readonly plan: JobPlan }) {
  const { plan } = props;
  if (plan.pieces.length === 0) return null;
  return (
    <section className={styles['part']} aria-label="How each piece is cut">
      <h2 className={styles['heading']}>How each piece is cut</h2>
      <ol className={styles['drawings']}>
        {plan.pieces.map((piece) => (
          <PieceView key={`${piece.fabric} ${piece.piece ?? 'new'}`} piece={piece} {...props} />
        ))}
      </ol>
      <p className={styles['quiet']}>
        Drawn to scale with the near end on the left and the selvages above and below. Cut in the order of the
        numbers; then cut each strip from its upper end. Hatched cloth is not kept.
      </p>
    </section>
  );
}

function PieceView(props: PlanProps & { readonly piece: PiecePlan }) {
  const { piece, setup, shelf, spotlight, onSpotlight } = props;
  const { length } = useDisplay();
  const found = findPiece(props);
  const name = nameOfCloth(piece.fabric, setup, shelf);
  const size = sizeWords(piece, length);
  const kind = found === null ? 'to buy' : choiceWords(found.kind).toLowerCase();
  const patchAt = (index: number): LayoutPatch => {
    const line = setup.lines[index];
    return line === undefined
      ? { key: '', label: '', size: '' }
      : { key: line.id, label: patchLabel(index), size: sizeWords(line, length) };
  };
  return (
    <li className={styles['drawingPart']}>
      <div className={styles['partHead']}>
        <h3>
          <Typeset text={`${name}, ${kind}, ${size}`} />
        </h3>
        {found !== null && (
          <Button
            look="quiet"
            isSmall
            aria-label={`Leave this piece of ${name} alone`}
            onClick={() => props.onChange(withPiece(setup, found.id, false))}
          >
            Leave this piece alone
          </Button>
        )}
      </div>
      <p className={styles['quiet']}>
        {counted(piece.placed.length, 'patch', 'patches')}, {counted(piece.foldedCuts, 'cut')} in{' '}
        {counted(piece.stages, 'stage')}
        {piece.cuts.some(({ layers }) => layers === 2) && ', folded once'}
      </p>
      <CutLayout
        title={`${name}, ${kind}, ${size}: ${counted(piece.placed.length, 'patch', 'patches')}`}
        tree={piece.tree}
        cuts={piece.cuts}
        patchAt={patchAt}
        swatch={found?.fabric.swatch ?? swatchOf(piece.fabric, shelf)}
        print={found?.fabric.direction ?? 'any'}
        done={0}
        spotlight={spotlight}
        onSpotlight={onSpotlight}
      />
    </li>
  );
}

function findPiece({ piece, shelf }: PlanProps & { readonly piece: PiecePlan }): {
  readonly id: ClothPieceId;
  readonly kind: string;
  readonly fabric: Fabric;
} | null {
  for (const { fabric, pieces } of shelf.cloth.values()) {
    const found = pieces.find(({ id }) => id === piece.piece);
    if (found !== undefined) return { id: found.id, kind: found.kind, fabric };
  }
  return null;
}

function swatchOf(key: string, shelf: PlanProps['shelf']): string | null {
  return [...shelf.cloth.values()].find(({ fabric }) => fabric.id === key)?.fabric.swatch ?? null;
}
