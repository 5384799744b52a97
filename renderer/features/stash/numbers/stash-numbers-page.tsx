import { Link } from 'react-router';
import type { StashNumbers } from '#core/contract/stash-numbers';
import { areaQuantity, moneyQuantity } from '#core/calculators/quantities';
import { formatArea } from '#core/units/format-area';
import { formatMoney } from '#core/units/format-money';
import { moneyFromMinor } from '#core/units/money';
import { useRead } from '#renderer/bridge/query';
import { farWords, today } from '#renderer/text/dates';
import { BarTable } from '#renderer/ui/charts/bar-table';
import { ButtonLink } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { EmptyState } from '#renderer/ui/page/empty-state';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { FigureList, HeroFigure } from '#renderer/ui/answers/quantity';
import { daysBetween } from '#core/units/calendar-date';
import { BoughtAgainstUsed, LeftoversBySize, ValueByMonth } from './numbers-charts';
import styles from './numbers.module.css';

/** The stash as a whole: what it is worth, what comes and goes, what lies too long, what each piece cost, and what is left over. */
export function StashNumbersPage() {
  const { value: insight, problem } = useRead('stash:numbers', {});
  return (
    <Page
      title="Insight"
      under="The stash as a whole, as the bookings add up. What was taken back counts as if it had never been."
      back={{ to: '/stash', words: 'Stash' }}
    >
      <ProblemNotice problem={problem} />
      {insight !== undefined && (isNothingBooked(insight) ? <NothingYet /> : <Numbers insight={insight} />)}
    </Page>
  );
}

function isNothingBooked({ months, longest, projectCount, leftovers }: StashNumbers): boolean {
  const isQuiet = months.every((month) => month.boughtArea === 0 && month.usedArea === 0);
  return isQuiet && longest.length === 0 && projectCount === 0 && leftovers.length === 0;
}

function NothingYet() {
  return (
    <EmptyState title="Nothing to tell yet" action={<ButtonLink to="/stash">To the stash</ButtonLink>}>
      <p>
        As soon as fabric is bought, cut or set aside, this page shows what lies on the shelf in money, what
        was bought against what was used, and what has lain longest.
      </p>
    </EmptyState>
  );
}

function Numbers({ insight }: { readonly insight: StashNumbers }) {
  return (
    <>
      <div className={styles['worth']}>
        <HeroFigure
          figure={{ label: 'On the shelf, as paid', quantity: moneyQuantity(insight.valueMinor) }}
        />
        <FigureList figures={[{ label: 'Fabric on the shelf', quantity: areaQuantity(insight.areaThere) }]} />
      </div>
      <div className={styles['figures']}>
        <BoughtAgainstUsed months={insight.months} />
        <ValueByMonth months={insight.months} />
        <HeldLongest insight={insight} />
        <CostByProject insight={insight} />
        <LeftoversBySize sides={insight.leftovers} />
      </div>
    </>
  );
}

function HeldLongest({ insight: { longest } }: { readonly insight: StashNumbers }) {
  const words = useWords();
  const now = today();
  if (longest.length === 0) return null;
  return (
    <BarTable
      title="What has lain longest"
      columns={['Fabric', 'Last bought or cut', 'There', 'Paid for it']}
      rows={longest.map(({ fabricId, name, since, areaThere, valueMinor }) => ({
        key: fabricId,
        name: <Link to={`/stash/${fabricId}`}>{name}</Link>,
        value: Math.max(0, daysBetween(since, now)),
        says: [farWords(since, now), words.area(areaThere), words.money(valueMinor)],
      }))}
    />
  );
}

function CostByProject({ insight: { projects, projectCount } }: { readonly insight: StashNumbers }) {
  const words = useWords();
  if (projects.length === 0) return null;
  return (
    <BarTable
      title="What each piece cost in fabric"
      columns={['Piece', 'Used', 'Paid for it']}
      rows={projects.map(({ projectId, name, area, costMinor }) => ({
        key: projectId,
        name: <Link to={`/projects/${projectId}`}>{name}</Link>,
        value: costMinor,
        says: [words.area(area), words.money(costMinor)],
      }))}
    >
      {projectCount > projects.length && (
        <p className={styles['more']}>
          The {projects.length} costliest of {projectCount}; each piece’s own page tells what it cost.
        </p>
      )}
    </BarTable>
  );
}

function useWords() {
  const { currency, length, locale } = useDisplay();
  return {
    money: (minor: number) => formatMoney(moneyFromMinor(minor, currency), locale),
    area: (area: number) => formatArea(area, length),
  };
}
