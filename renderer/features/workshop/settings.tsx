import { type Settings as SettingsOfWorkshop, settings, type Workshop } from '#core/domain/workshop';
import { useWrite } from '#renderer/bridge/query';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import styles from './workshop.module.css';

const GROUPS: readonly { readonly title: string; readonly fields: readonly (keyof SettingsOfWorkshop)[] }[] =
  [
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

/** How this workshop measures, cuts and counts; kept field by field. Answers that were made with another setting go out of date. */
export function Settings({ workshop }: { readonly workshop: Workshop }) {
  const changing = useWrite('workshop:change');
  const keep = (value: Readonly<Record<string, unknown>>) => {
    const checked = settings.safeParse(value);
    if (checked.success) void changing.write({ workshop: { ...workshop, settings: checked.data } });
  };
  return (
    <section className={styles['part']} aria-labelledby="settings">
      <h2 id="settings">Settings</h2>
      {GROUPS.map(({ title, fields }) => (
        <div key={title} className={styles['part']}>
          <h3>{title}</h3>
          <SchemaForm schema={settings} value={workshop.settings} only={fields} onChange={keep} />
        </div>
      ))}
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}
