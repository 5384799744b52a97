import type { ReactNode } from 'react';
import type { ProjectSpread } from '#core/contract/projects';
import type { Settings } from '#core/domain/workshop';
import { longDateWords } from '#renderer/text/dates';
import { outlineWords, PURPOSE_WORDS } from '#renderer/text/project-words';
import { useDisplay } from '#renderer/ui/base/display';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { LengthText, Typeset } from '#renderer/ui/answers/typeset';
import styles from '../paper/sheet.module.css';

interface ProjectFactsProps {
  readonly spread: ProjectSpread;
  readonly settings: Settings;
}

/** What the project is: its name, its drawing with dimensions, and the sizes used throughout. */
export function ProjectFacts({ spread, settings }: ProjectFactsProps) {
  const { project, swatches } = spread;
  const { length, locale } = useDisplay();
  const forWhom = project.forWhom === '' ? '' : ` for ${project.forWhom}`;
  return (
    <section className={styles['project']}>
      <ProjectDrawing project={project} swatches={swatches} size={300} hasDimensions />
      <div className={styles['projectWords']}>
        <h1>{project.name}</h1>
        <p>
          <Typeset text={`${outlineWords(project, length)}.`} />
        </p>
        <dl className={styles['facts']}>
          <Fact
            name={
              project.purpose === 'own' ? PURPOSE_WORDS.own : `${PURPOSE_WORDS[project.purpose]}${forWhom}`
            }
          >
            {project.dueOn === null ? 'no date set' : longDateWords(project.dueOn, locale)}
          </Fact>
          <Fact name="Seam allowance">
            <LengthText length={settings.seamAllowance} />
          </Fact>
          <Fact name="Outer binding strip">
            <LengthText length={settings.bindingStripWidth} />
          </Fact>
          {project.hole !== null && (
            <>
              <Fact name="Hole to cut, across">
                <LengthText length={project.hole.diameter} />
              </Fact>
              <Fact name="Inner binding strip">
                <LengthText length={settings.innerStripWidth} />
              </Fact>
            </>
          )}
          <Fact name="Usable fabric width">
            <LengthText length={settings.fabricWidth} />
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
