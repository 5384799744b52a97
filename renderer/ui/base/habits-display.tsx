import { type ReactNode, useMemo } from 'react';
import type { Habits } from '#core/domain/workshop';
import { DisplayContext, useDisplay } from './display';

interface HabitsDisplayProps {
  readonly habits: Pick<Habits, 'unitSystem' | 'inchStep'>;
  readonly children: ReactNode;
}

/** Everything inside writes lengths the way these habits (a project's, or the workshop's) want them. */
export function HabitsDisplay({ habits, children }: HabitsDisplayProps) {
  const around = useDisplay();
  const { unitSystem, inchStep } = habits;
  const display = useMemo(
    () => ({ ...around, length: { system: unitSystem, inchStep } }),
    [around, unitSystem, inchStep],
  );
  return <DisplayContext value={display}>{children}</DisplayContext>;
}
