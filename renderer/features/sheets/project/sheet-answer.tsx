import { isHowTo } from '#core/calculators/how-to';
import { DiagramView } from '#renderer/ui/drawings/diagram';
import { FigureTable } from '#renderer/ui/answers/figure-table';
import { Notes } from '#renderer/ui/page/notice';
import { FigureList, HeroFigure } from '#renderer/ui/answers/quantity';
import type { PaperAnswer } from './sheet-lines';
import styles from '../paper/sheet.module.css';

interface SheetAnswerProps {
  readonly answer: PaperAnswer;
  /** With its tables, for the current stage. How to do it is among the steps of the stage. */
  readonly isWhole: boolean;
}

/** A saved answer: its large figure and the others, the drawing beside them, and the warnings. */
export function SheetAnswer({ answer, isWhole }: SheetAnswerProps) {
  const { calculation, isOld, title } = answer;
  const [hero, ...others] = calculation.figures;
  const notes = calculation.notes.filter(({ kind }) => kind === 'warning');
  return (
    <article className={styles['answer']}>
      <div className={styles['answerHead']}>
        <h3>
          {title}
          {isOld && (
            <span className={styles['old']}>
              {' '}
              · the project has changed since: save this answer again first
            </span>
          )}
        </h3>
        <div className={styles['answerBody']}>
          <div className={styles['figures']}>
            {hero !== undefined && <HeroFigure figure={hero} />}
            {others.length > 0 && <FigureList figures={others} />}
          </div>
          {calculation.diagram !== null && (
            <DiagramView diagram={calculation.diagram} maxWidth={350} maxHeight={330} />
          )}
        </div>
      </div>
      {isWhole &&
        calculation.tables
          .filter((table) => !isHowTo(table))
          .map((table) => <FigureTable key={table.title} table={table} />)}
      <Notes notes={notes} />
    </article>
  );
}
