import type { Calculation } from '#core/calculators/calculator';
import { DiagramView } from './diagram';
import { FigureTable } from './figure-table';
import { Notes } from './notice';
import { FigureList, HeroFigure } from './quantity';
import styles from './answer.module.css';

interface AnswerProps {
  readonly calculation: Calculation;
  readonly maxWidth?: number;
}

/** An answer laid out for the table: its one large figure, the others beside it, the drawing, and what to mind. */
export function Answer({ calculation, maxWidth = 560 }: AnswerProps) {
  const [hero, ...others] = calculation.figures;
  return (
    <div className={styles['answer']}>
      <div className={styles['figures']}>
        {hero !== undefined && <HeroFigure figure={hero} />}
        {others.length > 0 && <FigureList figures={others} />}
      </div>
      <Notes notes={calculation.notes} />
      {calculation.diagram !== null && (
        <DiagramView diagram={calculation.diagram} maxWidth={maxWidth} maxHeight={420} />
      )}
      {calculation.tables.map((table) => (
        <FigureTable key={table.title} table={table} />
      ))}
    </div>
  );
}
