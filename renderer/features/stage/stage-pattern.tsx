import type { Stage } from '#core/domain/stage';
import { useRead } from '#renderer/bridge/query';
import { ButtonLink } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';

/** The pattern that a piecing stage follows, and the way to its cutting list. */
export function StagePattern({ stage }: { readonly stage: Stage }) {
  const { value: pattern } = useRead('pattern:open', { projectId: stage.projectId });
  if (pattern === undefined) return null;
  const words = [
    pattern?.patternName,
    pattern?.page === '' ? '' : `page ${pattern?.page ?? ''}`,
    pattern?.place,
  ];
  const said = words.filter((one) => (one ?? '') !== '').join(' · ');
  return (
    <section className={layout['part']} aria-label="Pattern">
      <div className={layout['partHead']}>
        <h3>Pattern</h3>
        <ButtonLink isSmall to={`/projects/${stage.projectId}/stages/${stage.id}/pattern`}>
          {pattern === null ? 'Paste a cutting list' : 'Open the pattern'}
        </ButtonLink>
      </div>
      <p className={layout['quiet']}>
        {pattern === null
          ? 'Do you follow a pattern on paper? Its cutting list is read line by line.'
          : said === ''
            ? 'Its cutting list is kept here.'
            : said}
      </p>
    </section>
  );
}
