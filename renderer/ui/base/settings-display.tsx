import { type ReactNode, useMemo } from 'react';
import type { Settings } from '#core/domain/workshop';
import { DisplayContext, useDisplay } from './display';

interface SettingsDisplayProps {
  readonly settings: Pick<Settings, 'unitSystem' | 'inchStep'>;
  readonly children: ReactNode;
}

/** Lengths inside are written in the units of these settings, of a project or of the workshop. */
export function SettingsDisplay({ settings, children }: SettingsDisplayProps) {
  const around = useDisplay();
  const { unitSystem, inchStep } = settings;
  const display = useMemo(
    () => ({ ...around, length: { system: unitSystem, inchStep } }),
    [around, unitSystem, inchStep],
  );
  return <DisplayContext value={display}>{children}</DisplayContext>;
}
