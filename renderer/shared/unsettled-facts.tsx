import { calculatorByName } from '#core/calculators/registry';
import type { ProjectId } from '#core/domain/ids';
import type { Measurements } from '#core/domain/measurements';
import { factsOfProject, factTitle, isCutSettled, type UnsettledFact } from '#core/domain/project-facts';
import { useRead, useWrite } from '../bridge/query';
import { factWords } from '../text/fact-words';
import { Typeset } from '../ui/answers/typeset';
import { useDisplay } from '../ui/base/display';
import { Button } from '../ui/page/button';
import { Notice } from '../ui/page/notice';
import { ProblemNotice } from '../ui/page/problem-notice';
import layout from '../ui/page/layout.module.css';

interface UnsettledFactsProps {
  readonly projectId: ProjectId;
  readonly measurements: Measurements;
}

/** Where a saved answer and the project disagree, with the one press that settles it. Nothing is drawn where they agree. */
export function UnsettledFacts({ projectId, measurements }: UnsettledFactsProps) {
  const { value: unsettled = [] } = useRead('project:unsettled', { projectId });
  if (unsettled.length === 0) return null;
  return (
    <Notice kind="warning" title="Not settled yet">
      <ul className={layout['part']}>
        {unsettled.map((one) => (
          <Line
            key={`${one.calculationId} ${one.fact}`}
            unsettled={one}
            projectId={projectId}
            measurements={measurements}
          />
        ))}
      </ul>
    </Notice>
  );
}

/** Whether nothing that the hole is cut by is unsettled. Undefined until that is known. */
export function useIsCutSettled(projectId: ProjectId): boolean | undefined {
  const { value } = useRead('project:unsettled', { projectId });
  return value === undefined ? undefined : isCutSettled(value);
}

interface LineProps {
  readonly unsettled: UnsettledFact;
  readonly projectId: ProjectId;
  readonly measurements: Measurements;
}

function Line({
  unsettled: { calculationId, calculator, fact, answer },
  projectId,
  measurements,
}: LineProps) {
  const display = useDisplay();
  const deciding = useWrite('project:decide');
  const following = useWrite('calculation:follow-project');
  const isBusy = deciding.isWriting || following.isWriting;
  const answers = factWords(fact, answer, display);
  const projects = factWords(fact, factsOfProject(measurements), display);
  const title = calculatorByName(calculator)?.title ?? calculator;
  return (
    <li>
      <p>
        <Typeset text={`${factTitle(fact)}: “${title}” has ${answers}, the project has ${projects}.`} />
      </p>
      <div className={layout['row']}>
        <Button isSmall disabled={isBusy} onClick={() => void deciding.write({ projectId, decided: answer })}>
          Use {answers}
        </Button>
        <Button isSmall disabled={isBusy} onClick={() => void following.write({ calculationId })}>
          Keep {projects}
        </Button>
      </div>
      <ProblemNotice problem={deciding.problem ?? following.problem} />
    </li>
  );
}
