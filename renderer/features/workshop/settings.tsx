import { type Settings as SettingsOfWorkshop, settingsSchema, type Workshop } from '#core/domain/workshop';
import { useWrite } from '#renderer/bridge/query';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { SchemaForm } from '#renderer/ui/schema-form/schema-form';
import layout from '#renderer/ui/page/layout.module.css';

const GROUPS: readonly { readonly title: string; readonly fields: readonly (keyof SettingsOfWorkshop)[] }[] =
  [
    { title: 'Measuring', fields: ['unitSystem', 'inchStep'] },
    {
      title: 'Piecing and fabric',
      fields: ['seamAllowance', 'seamOff', 'cutOff', 'fabricWidth', 'safetyExtraPercent'],
    },
    {
      title: 'Binding',
      fields: ['bindingStripWidth', 'bindingOverlap', 'innerStripWidth', 'quiltThickness', 'backCover'],
    },
    {
      title: 'Backing, batting and longarm quilting',
      fields: [
        'backingOverhang',
        'backingSeam',
        'longarmRateMinor',
        'longarmMinimumMinor',
        'turnaroundDays',
        'silentDays',
      ],
    },
    { title: 'Washing', fields: ['washAcrossPercent', 'washAlongPercent'] },
    { title: 'Your time', fields: ['handStitchPerHour', 'hourRateMinor', 'clockStepMinutes'] },
  ];

/** The settings of the workshop. Each is saved as it is changed; answers saved with another value go out of date. */
export function Settings({ workshop }: { readonly workshop: Workshop }) {
  const changing = useWrite('workshop:change');
  const save = (value: Readonly<Record<string, unknown>>) => {
    const checked = settingsSchema.safeParse(value);
    if (checked.success) void changing.write({ workshop: { ...workshop, settings: checked.data } });
  };
  return (
    <section className={layout['stack']} aria-labelledby="settings">
      <h2 id="settings">Settings</h2>
      {GROUPS.map(({ title, fields }) => (
        <div key={title} className={layout['stack']}>
          <h3>{title}</h3>
          <SchemaForm schema={settingsSchema} value={workshop.settings} only={fields} onChange={save} />
        </div>
      ))}
      <ProblemNotice problem={changing.problem} />
    </section>
  );
}
