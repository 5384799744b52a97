import type { JobPlan, PiecePlan } from '#core/cutting/tree/cutting-job';
import { cutsWords } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { Typeset } from '#renderer/ui/answers/typeset';
import { findPiece, PlannedPiece, usePlannedPieceWords } from './planned-piece';
import type { CuttingPlanProps } from './cutting-plan-props';
import { withPiece } from '../desk/setup-changes';
import { useOneByOne } from './use-one-by-one';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './planning.module.css';

/** Draws every piece of fabric that the plan cuts, to scale. */
export function PlanPieces(props: CuttingPlanProps & { readonly plan: JobPlan }) {
  const { plan } = props;
  const drawn = useOneByOne(plan.pieces.length);
  if (plan.pieces.length === 0) return null;
  return (
    <section className={layout['part']} aria-label="How each piece is cut">
      <h2 className={layout['heading']}>How each piece is cut</h2>
      <ol className={styles['drawings']}>
        {plan.pieces.slice(0, drawn).map((piece) => (
          <PieceView key={`${piece.fabric} ${piece.piece ?? 'new'}`} piece={piece} {...props} />
        ))}
      </ol>
      <p className={layout['quiet']}>
        Drawn to scale, with the near end on the left and the selvages at top and bottom. Cut strip by strip
        in the order of the numbers, each from its upper end. Hatched fabric is scrap.
      </p>
    </section>
  );
}

function PieceView({ piece, ...props }: CuttingPlanProps & { readonly piece: PiecePlan }) {
  const { setup, stash } = props;
  const found = findPiece(piece, stash);
  const { name, kind, size } = usePlannedPieceWords(piece, setup, stash);
  const done = (found === null ? undefined : props.locks.get(found.piece.id)?.length) ?? 0;
  return (
    <li className={styles['drawingPart']}>
      <div className={layout['partHead']}>
        <h3>
          <Typeset text={`${name}, ${kind}, ${size}`} />
        </h3>
        {found !== null && (
          <Button
            look="quiet"
            isSmall
            aria-label={`Leave this piece of ${name} alone`}
            onClick={() => props.onChange(withPiece(setup, found.piece.id, false))}
          >
            {done > 0 ? 'Cut no more from it' : 'Leave this piece alone'}
          </Button>
        )}
      </div>
      <p className={layout['quiet']}>{cutsWords(piece)}</p>
      <PlannedPiece
        piece={piece}
        setup={setup}
        stash={stash}
        goesTo={props.goesTo}
        done={done}
        spotlight={props.spotlight}
        onSpotlight={props.onSpotlight}
      />
    </li>
  );
}
