import { useMemo } from 'react';
import { answerCalculator } from '#core/calculators/complete-input';
import { patternList } from '#core/calculators/patches/pattern-list/pattern-list';
import { readCuttingList } from '#core/cutting-list/read-cutting-list';
import type { Measurements } from '#core/domain/measurements';
import { type PatternDetails, patternDetailsSchema, type PatternFile } from '#core/domain/pattern';
import type { Stage } from '#core/domain/stage';
import { useWrite } from '#renderer/bridge/query';
import { counted } from '#renderer/text/cut-words';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { TextField } from '#renderer/ui/fields/text-field';
import { Button } from '#renderer/ui/page/button';
import { DiscardEntries } from '#renderer/ui/page/discard-entries';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { classes } from '#renderer/ui/base/classes';
import { ListFabrics } from './list-fabrics';
import { ListText } from './list-text';
import { patternFields } from './pattern-fields';
import { PatternAnswer } from './pattern-answer';
import { PatternFileField } from './pattern-file-field';
import { ReadLines } from './read-lines';
import layout from '#renderer/ui/page/layout.module.css';
import styles from './pattern.module.css';

interface PatternFormProps {
  readonly stage: Stage;
  readonly measurements: Measurements;
  readonly saved: PatternDetails;
  readonly file: PatternFile | null;
}

/** The list on the left, what was read from it on the right; below, the fabrics and what the patches take. */
export function PatternForm({ stage, measurements, saved, file }: PatternFormProps) {
  const { projectId } = stage;
  const draft = useFormDraft(`pattern ${projectId}`);
  const [details, setDetails] = useDraftValue(draft, 'details', saved, isDetails);
  const saving = useWrite('pattern:save');
  const { listText, bareUnit, fabrics } = details;
  const reading = useMemo(() => readCuttingList(listText, bareUnit), [listText, bareUnit]);
  const fields = patternFields(reading, fabrics, measurements.settings.fabricWidth);
  const answered = fields.patches.length === 0 ? null : answerCalculator(patternList, measurements, fields);
  const change = (part: Partial<PatternDetails>) => setDetails((before) => ({ ...before, ...part }));
  const save = async () => {
    // What cannot be worked out yet leaves the answer saved before as it is.
    const ownInput = answered === null ? null : fields;
    const answer =
      answered?.ok === false ? null : { stageId: stage.id, calculator: patternList.name, ownInput };
    const done = await saving.write({ projectId, details, answer });
    if (done.ok) draft.forget();
  };
  const replace = (index: number, text: string) => {
    const lines = reading.lines.map((line, place) => (place === index ? text : line.text));
    change({ listText: lines.join('\n') });
  };
  return (
    <Page
      title="Pattern"
      under="Type or paste its cutting list as it stands. Nothing of it leaves this computer."
      back={{ to: `/projects/${projectId}/stages/${stage.id}`, words: stage.name }}
      action={
        <Button look="main" disabled={saving.isWriting || !isDetails(details)} onClick={() => void save()}>
          Save the pattern
        </Button>
      }
      aside={<DiscardEntries draft={draft} />}
    >
      <div className={layout['sections']}>
        <div className={layout['fields']}>
          <TextField
            label="Pattern"
            value={details.patternName}
            maximum={200}
            isOptional
            onChange={(patternName) => change({ patternName })}
          />
          <TextField
            label="Page"
            value={details.page}
            maximum={60}
            isOptional
            onChange={(page) => change({ page })}
          />
          <TextField
            label="Stored in"
            help="Where the pattern itself is."
            value={details.place}
            maximum={200}
            isOptional
            onChange={(place) => change({ place })}
          />
          <PatternFileField projectId={projectId} file={file} />
        </div>
        <div className={classes(layout['spread'], styles['columns'])}>
          <div className={layout['leaf']}>
            <ListText details={details} hasBareSizes={reading.hasBareSizes} onChange={change} />
          </div>
          <section className={layout['leaf']} aria-labelledby="what-was-read">
            <h2 id="what-was-read" className={layout['heading']}>
              What was read
            </h2>
            <p className={layout['quiet']} role="status">
              {readWords(reading)}
            </p>
            <ReadLines
              projectId={projectId}
              lines={reading.lines}
              roles={reading.roles}
              onReplace={replace}
            />
          </section>
        </div>
        <ListFabrics roles={reading.roles} fabrics={fabrics} onChange={(next) => change({ fabrics: next })} />
        {answered !== null && <PatternAnswer answered={answered} />}
        <ProblemNotice problem={saving.problem} />
      </div>
    </Page>
  );
}

function isDetails(stored: unknown): stored is PatternDetails {
  return patternDetailsSchema.safeParse(stored).success;
}

/** `12 lines, 9 kinds of patches; 2 lines need a look` */
function readWords({ lines, patches }: ReturnType<typeof readCuttingList>): string {
  const read = lines.filter(({ kind }) => kind !== 'blank');
  if (read.length === 0) return 'Nothing yet. What is read appears here, line by line.';
  const marked = read.filter(({ marks }) => marks.length > 0).length;
  const all = `${counted(read.length, 'line')}, ${counted(patches.length, 'kind of patches', 'kinds of patches')}`;
  if (marked === 0) return `${all}. Everything was understood.`;
  return `${all}. ${marked === 1 ? '1 line needs' : `${String(marked)} lines need`} a look.`;
}
