import { Link } from 'react-router';
import type { StashNumbers } from '#core/contract/stash-numbers';
import { areaQuantity, wordsQuantity } from '#core/calculators/quantities';
import { formatArea } from '#core/units/format-area';
import { firstDayOf, isWholeDate } from '#core/units/partial-date';
import { useRead } from '#renderer/bridge/query';
import { costWords, unpricedWords } from '#renderer/text/cost-words';
import { farWords, partialDateWords, today } from '#renderer/text/dates';
import { BarTable } from '#renderer/ui/charts/bar-table';
import { ButtonLink } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { FigureList, HeroFigure } from '#renderer/ui/answers/quantity';
import { daysBetween } from '#core/units/calendar-date';
import { BoughtAndUsed, LeftoversBySize, ValueByMonth } from './numbers-charts';
import styles from './numbers.module.css';

/** The whole stash in numbers: its value, what was bought and used, what was kept longest, what each project cost, and leftovers. */
export function StashNumbersPage() {
  const { value: numbers, problem } = useRead('stash:numbers', {});
  return (
    <Page
      title="Stash in numbers"
      under="Your whole stash at a glance. Entries you undid aren’t counted."
      back={{ to: '/stash', words: 'Stash' }}
    >
      <ProblemNotice problem={problem} />
      {numbers !== undefined && (isNothingBooked(numbers) ? <NothingYet /> : <Numbers numbers={numbers} />)}
    </Page>
  );
}

function isNothingBooked({ months, longest, projectCount, leftovers }: StashNumbers): boolean {
  const isQuiet = months.every((month) => month.boughtArea === 0 && month.usedArea === 0);
  return isQuiet && longest.length === 0 && projectCount === 0 && leftovers.length === 0;
}

function NothingYet() {
  return (
    <EmptyState title="No numbers yet" action={<ButtonLink to="/stash">Go to your stash</ButtonLink>}>
      <p>
        Once you buy, cut or set aside fabric, this page shows what your stash is worth, what you bought and
        used, and what you have had longest.
      </p>
    </EmptyState>
  );
}

function Numbers({ numbers }: { readonly numbers: StashNumbers }) {
  const display = useDisplay();
  const unpriced = unpricedWords(numbers.value, display.length);
  return (
    <>
      <div className={styles['worth']}>
        <HeroFigure
          figure={{
            label: 'Value of your stash, as paid',
            quantity: wordsQuantity(costWords(numbers.value, display)),
          }}
        />
        <FigureList
          figures={[{ label: 'Fabric in your stash', quantity: areaQuantity(numbers.areaThere) }]}
        />
      </div>
      {unpriced !== '' && <p className={styles['more']}>{unpriced}</p>}
      <div className={styles['figures']}>
        <BoughtAndUsed months={numbers.months} />
        <ValueByMonth months={numbers.months} />
        <HeldLongest numbers={numbers} />
        <CostByProject numbers={numbers} />
        <LeftoversBySize sides={numbers.leftovers} />
        <p className={styles['more']}>
          All amounts come from what you entered. Tax rules are local, and nothing here is advice on them.
        </p>
      </div>
    </>
  );
}

function HeldLongest({ numbers: { longest, unmovedForUnknown } }: { readonly numbers: StashNumbers }) {
  const display = useDisplay();
  const now = today();
  if (longest.length === 0) return null;
  const sinceWords = (since: (typeof longest)[number]['since']) =>
    isWholeDate(since) ? farWords(since, now) : partialDateWords(since, display.locale, now);
  return (
    <BarTable
      title="Fabric you’ve had longest"
      columns={['Fabric', 'Last bought or cut', 'Amount', 'Paid for it']}
      rows={longest.map(({ fabricId, name, since, areaThere, value }) => ({
        key: fabricId,
        name: <Link to={`/stash/${fabricId}`}>{name}</Link>,
        value: Math.max(0, daysBetween(firstDayOf(since), now)),
        texts: [sinceWords(since), formatArea(areaThere, display.length), costWords(value, display)],
      }))}
    >
      {unmovedForUnknown > 0 && (
        <p className={styles['more']}>
          {unmovedForUnknown === 1 ? '1 fabric isn’t' : `${String(unmovedForUnknown)} fabrics aren’t`} in this
          list: never cut, and the day bought is not known.
        </p>
      )}
    </BarTable>
  );
}

function CostByProject({ numbers: { projects, projectCount } }: { readonly numbers: StashNumbers }) {
  const display = useDisplay();
  if (projects.length === 0) return null;
  return (
    <BarTable
      title="What each project cost in fabric"
      columns={['Project', 'Used', 'Paid for it']}
      rows={projects.map(({ projectId, name, area, cost }) => ({
        key: projectId,
        name: <Link to={`/projects/${projectId}`}>{name}</Link>,
        value: cost.minor,
        texts: [formatArea(area, display.length), costWords(cost, display)],
      }))}
    >
      {projectCount > projects.length && (
        <p className={styles['more']}>
          The {projects.length} most expensive of {projectCount}. Each project’s own page shows its cost.
        </p>
      )}
    </BarTable>
  );
}
