import type { ReactNode } from 'react';
import type { ProjectSpread } from '#core/contract/projects';
import type { Habits } from '#core/domain/workshop';
import { longDateWords } from '#renderer/text/dates';
import { pieceWords, PURPOSE_WORDS } from '#renderer/text/piece-words';
import { useDisplay } from '#renderer/ui/base/display';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { LengthText, Typeset } from '#renderer/ui/answers/typeset';
import styles from './project-sheet.module.css';

interface SheetPieceProps {
  readonly spread: ProjectSpread;
  readonly habits: Habits;
}

/** What the piece is: its name, its drawing with dimensions, and the sizes that hold all the way through. */
export function SheetPiece({ spread, habits }: SheetPieceProps) {
  const { project, swatches } = spread;
  const { length, locale } = useDisplay();
  const forWhom = project.forWhom === '' ? '' : ` for ${project.forWhom}`;
  return (
    <section className={styles['piece']}>
      <ProjectDrawing piece={project} swatches={swatches} size={300} hasDimensions />
      <div className={styles['pieceWords']}>
        <h1>{project.name}</h1>
        <p>
          <Typeset text={`${pieceWords(project, length)}.`} />
        </p>
        <dl className={styles['facts']}>
          <Fact
            name={
              project.purpose === 'own' ? PURPOSE_WORDS.own : `${PURPOSE_WORDS[project.purpose]}${forWhom}`
            }
          >
            {project.dueOn === null ? 'no day set' : longDateWords(project.dueOn, locale)}
          </Fact>
          <Fact name="Seam">
            <LengthText length={habits.seamAllowance} />
          </Fact>
          <Fact name="Outer binding strip">
            <LengthText length={habits.bindingStripWidth} />
          </Fact>
          {project.hole !== null && (
            <>
              <Fact name="Hole, cut across">
                <LengthText length={project.hole.diameter} />
              </Fact>
              <Fact name="Inner binding strip">
                <LengthText length={habits.innerStripWidth} />
              </Fact>
            </>
          )}
          <Fact name="Usable fabric width">
            <LengthText length={habits.fabricWidth} />
          </Fact>
        </dl>
      </div>
      {project.notes !== '' && <p className={styles['notes']}>{project.notes}</p>}
    </section>
  );
}

function Fact({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
