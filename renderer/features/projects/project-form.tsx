import { settingChanges, settingsOfProject } from '#core/domain/workshop';
import { useWorkshop } from '#renderer/bridge/workshop';
import { PURPOSE_WORDS } from '#renderer/text/project-words';
import { Choice } from '#renderer/ui/fields/choice';
import { DateField } from '#renderer/ui/fields/date-field';
import { Form } from '#renderer/ui/fields/form';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { ProjectDrawing } from '#renderer/ui/drawings/project-drawing';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import { TextField } from '#renderer/ui/fields/text-field';
import { outlineOfDraft, previewOutline, type ProjectDraft } from './project-draft';
import { ShapeFields } from './shape-fields';
import styles from './project-form.module.css';

interface ProjectFormProps {
  readonly id: string;
  readonly draft: ProjectDraft;
  readonly onChange: (draft: ProjectDraft) => void;
  readonly onSubmit: () => void;
  readonly swatches?: readonly string[];
  /** Whether a new project would be done in time. */
  readonly inTime?: React.ReactNode;
  /** The choice of a stage plan, for a new project. */
  readonly stages?: React.ReactNode;
}

const PURPOSES = ['gift', 'commission', 'own'] as const;

/** The fields of a project, with the project drawn beside them. */
export function ProjectForm(props: ProjectFormProps) {
  const { id, draft, onChange, onSubmit, swatches = [], inTime, stages } = props;
  const workshop = useWorkshop();
  const change = (changed: Partial<ProjectDraft>) => onChange({ ...draft, ...changed });
  return (
    <SettingsDisplay settings={settingsOfProject(workshop.settings, draft.settingChanges)}>
      <div className={styles['sides']}>
        <Form id={id} className={styles['form']} onSubmit={onSubmit}>
          <section className={styles['part']}>
            <TextField
              label="Name"
              value={draft.name}
              maximum={120}
              emptyProblem="Give the project a name, such as Harvest round."
              onChange={(name) => change({ name })}
            />
            <Choice
              label="Purpose"
              value={draft.purpose}
              options={PURPOSES.map((value) => ({ value, words: PURPOSE_WORDS[value] }))}
              onChange={(purpose) => change({ purpose })}
            />
            <div className={styles['pair']}>
              <TextField
                label="Who it’s for"
                isOptional
                value={draft.forWhom}
                maximum={120}
                onChange={(forWhom) => change({ forWhom })}
              />
              <DateField label="Due" isOptional value={draft.dueOn} onChange={(dueOn) => change({ dueOn })} />
            </div>
          </section>
          <ShapeFields draft={draft} onChange={change} />
          {stages}
          <details className={styles['part']}>
            <summary className={styles['summary']}>Settings for this project only</summary>
            <p className={styles['hint']}>A blank field uses the workshop’s setting.</p>
            <SchemaForm
              schema={settingChanges}
              value={draft.settingChanges}
              fallbacks={workshop.settings}
              onChange={(changed) => change({ settingChanges: changed })}
            />
          </details>
          <TextField
            label="Notes"
            isOptional
            isLong
            value={draft.notes}
            maximum={20_000}
            onChange={(notes) => change({ notes })}
          />
        </Form>
        <Preview draft={draft} swatches={swatches} inTime={inTime} />
      </div>
    </SettingsDisplay>
  );
}

function Preview({
  draft,
  swatches,
  inTime,
}: {
  readonly draft: ProjectDraft;
  readonly swatches: readonly string[];
  readonly inTime: React.ReactNode;
}) {
  const outline = outlineOfDraft(draft);
  const hole = draft.hasHole && draft.holeDiameter !== null ? { diameter: draft.holeDiameter } : null;
  return (
    <aside className={styles['preview']} aria-label="Preview of the project">
      <ProjectDrawing
        project={{ outline: outline ?? previewOutline(draft), hole, hasSlit: draft.hasSlit && hole !== null }}
        swatches={swatches}
        size={360}
        hasDimensions={outline !== null}
        isSilent={outline === null}
      />
      <p className={styles['hint']} role="status">
        {outline === null ? 'Sample size, until you enter yours.' : ''}
      </p>
      {inTime}
    </aside>
  );
}
