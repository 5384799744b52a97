import { type Habits as HabitsOfWorkshop, habits, type Workshop } from '#core/domain/workshop';
import { useWrite } from '#renderer/bridge/query';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import styles from './workshop.module.css';

const GROUPS: readonly { readonly title: string; readonly fields: readonly (keyof HabitsOfWorkshop)[] }[] = [
  { title: 'Measuring', fields: ['unitSystem', 'inchStep'] },
  { title: 'Piecing and fabric', fields: ['seamAllowance', 'fabricWidth', 'safetyExtraPercent'] },
  {
    title: 'Binding',
    fields: ['bindingStripWidth', 'bindingOverlap', 'innerStripWidth', 'quiltThickness', 'backCover'],
  },
  {
    title: 'Backing, batting and the longarm',
    fields: [
      'backingOverhang',
      'backingSeam',
      'longarmRateMinor',
      'longarmMinimumMinor',
      'turnaroundDays',
      'silentDays',
    ],
  },
  { title: 'Your time', fields: ['handStitchPerHour', 'hourRateMinor', 'clockStepMinutes'] },
];

/** How this workshop measures, cuts and counts; kept field by field. Answers that were made with another habit go out of date. */
export function Habits({ workshop }: { readonly workshop: Workshop }) {
  const changing = useWrite('workshop:change');
  const keep = (value: Readonly<Record<string, unknown>>) => {
    const checked = habits.safeParse(value);
    if (checked.success) void changing.write({ workshop: { ...workshop, habits: checked.data } });
  };
  return (
    <section className={styles['part']} aria-labelledby="habits">
      <h2 id="habits">Habits</h2>
      {GROUPS.map(({ title, fields }) => (
        <div key={title} className={styles['part']}>
          <h3>{title}</h3>
          <SchemaForm schema={habits} value={workshop.habits} only={fields} onChange={keep} />
        </div>
      ))}
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}
