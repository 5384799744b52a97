import type { JobPlan, PiecePlan } from '#core/cutting/tree/cutting-job';
import { cutsWords } from '#renderer/text/cut-words';
import { Button } from '#renderer/ui/page/button';
import { Typeset } from '#renderer/ui/answers/typeset';
import { findPiece, PieceDrawing, usePieceWords } from './piece-drawing';
import type { PlanProps } from './plan-props';
import { withPiece } from '../desk/setup-changes';
import { useOneByOne } from './use-one-by-one';
import styles from '../cutting.module.css';

/** Every piece of fabric the plan cuts, drawn to scale. */
export function PlanPieces(props: PlanProps & { readonly plan: JobPlan }) {
  const { plan } = props;
  const drawn = useOneByOne(plan.pieces.length);
  if (plan.pieces.length === 0) return null;
  return (
    <section className={styles['part']} aria-label="How each piece is cut">
      <h2 className={styles['heading']}>How each piece is cut</h2>
      <ol className={styles['drawings']}>
        {plan.pieces.slice(0, drawn).map((piece) => (
          <PieceView key={`${piece.fabric} ${piece.piece ?? 'new'}`} piece={piece} {...props} />
        ))}
      </ol>
      <p className={styles['quiet']}>
        Drawn to scale with the near end on the left and the selvages above and below. Cut strip after strip
        in the order of the numbers, each from its upper end. Hatched fabric is not kept.
      </p>
    </section>
  );
}

function PieceView({ piece, ...props }: PlanProps & { readonly piece: PiecePlan }) {
  const { setup, shelf } = props;
  const found = findPiece(piece, shelf);
  const { name, kind, size } = usePieceWords(piece, setup, shelf);
  const done = (found === null ? undefined : props.locks.get(found.piece.id)?.length) ?? 0;
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
            onClick={() => props.onChange(withPiece(setup, found.piece.id, false))}
          >
            {done > 0 ? 'Cut no more of it' : 'Leave this piece alone'}
          </Button>
        )}
      </div>
      <p className={styles['quiet']}>{cutsWords(piece)}</p>
      <PieceDrawing
        piece={piece}
        setup={setup}
        shelf={shelf}
        goesTo={props.goesTo}
        done={done}
        spotlight={props.spotlight}
        onSpotlight={props.onSpotlight}
      />
    </li>
  );
}
