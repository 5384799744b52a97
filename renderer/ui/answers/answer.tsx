import type { Calculation } from '#core/calculators/calculator';
import { DiagramView } from '../drawings/diagram';
import { FigureTable } from './figure-table';
import { Notes } from '../page/notice';
import { FigureList, HeroFigure } from './quantity';
import styles from './answer.module.css';

interface AnswerProps {
  readonly calculation: Calculation;
}

/** The first figure of an answer, large, and the others beside it. */
export function AnswerFigures({ calculation }: AnswerProps) {
  const [hero, ...others] = calculation.figures;
  return (
    <div className={styles['figures']}>
      {hero !== undefined && <HeroFigure figure={hero} />}
      {others.length > 0 && <FigureList figures={others} />}
    </div>
  );
}

/** The rest of an answer: its drawing to scale, notes and tables. */
export function AnswerDetails({ calculation, maxWidth = 560 }: AnswerProps & { readonly maxWidth?: number }) {
  return (
    <>
      {calculation.diagram !== null && (
        <DiagramView diagram={calculation.diagram} maxWidth={maxWidth} maxHeight={420} />
      )}
      <Notes notes={calculation.notes} />
      {calculation.tables.map((table) => (
        <FigureTable key={table.title} table={table} />
      ))}
    </>
  );
}
