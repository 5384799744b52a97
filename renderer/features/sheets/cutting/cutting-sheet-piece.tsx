import type { PiecePlan } from '#core/cutting/tree/cutting-job';
import { type KeptWithTicks, lengthDone, bookedTicks, stepsOfPiece } from '#core/cutting/tree/kept-plan';
import type { KeptPiece } from '#core/domain/cutting-plan';
import type { FabricPiece, Fabric } from '#core/domain/stash';
import { UNITS_PER_INCH } from '#core/units/length';
import { roundNearest } from '#core/units/rounding';
import { choiceWords } from '#renderer/text/choice-words';
import { cutsWords, patchLabel, pieceSizeWords, stepWords } from '#renderer/text/cut-words';
import { sizeWords } from '#renderer/text/size-words';
import { useDisplay } from '#renderer/ui/base/display';
import { layoutScale, PieceLayout } from '#renderer/ui/drawings/piece-layout';
import { Typeset } from '#renderer/ui/answers/typeset';
import { PaperBox } from '../paper/paper-box';
import styles from './cutting-sheet.module.css';
import shared from '../paper/sheet.module.css';

export interface NamedFabric extends Fabric {
  readonly pieces: readonly FabricPiece[];
}

interface CuttingSheetPieceProps {
  readonly piece: KeptPiece;
  readonly plan: PiecePlan;
  readonly saved: KeptWithTicks;
  readonly name: string;
  /** Undefined when the fabric is not in the stash. */
  readonly fabric: NamedFabric | undefined;
}

/** In CSS pixels, 96 to an inch; fits inside the margins of the narrower paper. */
const DRAWING = { width: 660, height: 330 };
const PIXELS_PER_UNIT = 96 / UNITS_PER_INCH;

/** One piece of fabric on paper: its drawing without color, for printing in gray, and its steps with boxes to tick. */
export function CuttingSheetPiece({ piece, plan, saved, name, fabric }: CuttingSheetPieceProps) {
  const { length } = useDisplay();
  const { lines } = saved.plan.setup;
  const steps = stepsOfPiece(piece, saved.ticked);
  const done = new Set(bookedTicks(saved.ticked, piece.pieceId).map(({ place }) => place));
  const source = fabric?.pieces.find(({ id }) => id === piece.pieceId);
  const missing = piece.pieceId === null ? 'to buy' : 'cut up';
  const kindWords = source === undefined ? missing : choiceWords(source.kind).toLowerCase();
  const title = `${name}, ${kindWords}, ${pieceSizeWords(plan, length)}`;
  const scale = layoutScale(plan.tree, DRAWING.width, DRAWING.height);
  return (
    <section className={shared['stage']}>
      <div className={styles['pieceHead']}>
        <div className={shared['stageHead']}>
          <h2>
            <Typeset text={title} />
          </h2>
          <span className={styles['scale']}>drawn 1 : {roundNearest(PIXELS_PER_UNIT / scale, 1)}</span>
        </div>
        <p className={shared['quiet']}>{cutsWords(plan)}. Near end on the left; hatched fabric is scrap.</p>
        <PieceLayout
          title={title}
          piece={plan}
          steps={steps}
          patchAt={(index) => {
            const line = lines[index];
            return {
              key: String(index),
              label: patchLabel(index),
              size: line ? sizeWords(line, length) : '',
              goesTo: '',
            };
          }}
          swatch={null}
          print={fabric?.direction ?? 'any'}
          printRuns={source?.printRuns ?? 'along'}
          done={lengthDone(piece, saved.ticked)}
          maxWidth={DRAWING.width}
          maxHeight={DRAWING.height}
        />
      </div>
      <ol className={styles['steps']}>
        {steps.map((step, place) => (
          <li key={place} className={styles['step']}>
            <PaperBox isTicked={done.has(place)} />
            <strong>{place + 1}</strong>
            <span>
              {stepWords(step, length).map(({ depth, words }, index) => (
                <span key={index} className={depth === 0 ? styles['strip'] : styles['inner']}>
                  <Typeset text={`${words} `} />
                </span>
              ))}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
