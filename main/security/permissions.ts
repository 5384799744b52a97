import { session } from 'electron';

/** The page asks the system for nothing but to put text on the clipboard. */
const GRANTED: ReadonlySet<string> = new Set(['clipboard-sanitized-write']);

export function refusePermissions(): void {
  const { defaultSession } = session;
  defaultSession.setPermissionRequestHandler((_contents, permission, decide) => {
    decide(GRANTED.has(permission));
  });
  defaultSession.setPermissionCheckHandler((_contents, permission) => GRANTED.has(permission));
  defaultSession.setDevicePermissionHandler(() => false);
}
