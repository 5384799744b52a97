import { Link } from 'react-router';
import type { ProjectGlance } from '#core/contract/projects';
import { settingsOfProject } from '#core/domain/workshop';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { awayWords, nowWords, standingLines, standingOf } from '#renderer/text/standing';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { placeBeside } from './view-model';
import styles from './board.module.css';

interface BoardCardProps {
  readonly glance: ProjectGlance;
  readonly isBusy: boolean;
  readonly onDrag: (glance: ProjectGlance | null) => void;
  readonly onMove: (by: -1 | 1) => void;
}

/** One piece on the board: seen, named, and moved one stage on or back. */
export function BoardCard({ glance, isBusy, onDrag, onMove }: BoardCardProps) {
  const { project, stages, swatches } = glance;
  const { locale } = useDisplay();
  const { settings } = useWorkshop();
  const on = today();
  const standing = standingOf(glance, on);
  const [back, next] = [placeBeside(glance, -1), placeBeside(glance, 1)];
  return (
    <SettingsDisplay settings={settingsOfProject(settings, project.settingChanges)}>
      <li
        className={styles['card']}
        data-card={project.id}
        draggable
        onDragStart={(event) => {
          event.dataTransfer.setData('text/plain', project.name);
          onDrag(glance);
        }}
        onDragEnd={() => onDrag(null)}
        onKeyDown={(event) => {
          if (!event.altKey || (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight')) return;
          event.preventDefault();
          onMove(event.key === 'ArrowLeft' ? -1 : 1);
        }}
      >
        <ProjectDrawing
          piece={project}
          stages={stages}
          swatches={swatches}
          size={88}
          awayWords={awayWords(standing, on, locale)}
        />
        <Link to={`/projects/${project.id}`} className={styles['name']} draggable={false}>
          {project.name}
        </Link>
        <p className={styles['quiet']}>{nowWords(standing, stages)}</p>
        {standingLines(glance, standing, on, locale).map((line) => (
          <p key={line.text} className={classes(styles['quiet'], line.isAlert && styles['alert'])}>
            {line.text}
          </p>
        ))}
        <span className={styles['moves']}>
          {back !== undefined && (
            <Button
              look="quiet"
              isSmall
              disabled={isBusy}
              aria-label={`${project.name} back to ${back.stage?.name ?? 'finished'}`}
              onClick={() => onMove(-1)}
            >
              Back
            </Button>
          )}
          {next !== undefined && (
            <Button
              look="quiet"
              isSmall
              disabled={isBusy}
              aria-label={`${project.name} on to ${next.stage?.name ?? 'finished'}`}
              onClick={() => onMove(1)}
            >
              On
            </Button>
          )}
        </span>
      </li>
    </SettingsDisplay>
  );
}
