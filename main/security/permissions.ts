import { session } from 'electron';

/** The only permission the page needs: writing text to the clipboard. */
const GRANTED: ReadonlySet<string> = new Set(['clipboard-sanitized-write']);

export function refusePermissions(): void {
  const { defaultSession } = session;
  defaultSession.setPermissionRequestHandler((_contents, permission, decide) => {
    decide(GRANTED.has(permission));
  });
  defaultSession.setPermissionCheckHandler((_contents, permission) => GRANTED.has(permission));
  defaultSession.setDevicePermissionHandler(() => false);
}
