import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { protocol } from 'electron';
import { CONTENT_SECURITY_POLICY } from './content-policy';

/** The only origin of the page and its photos. */
export const APP_ORIGIN = 'app://bundle';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

/** Must run before the app is ready, because schemes get their rights only until then. */
export function registerAppScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

interface ServedPhoto {
  readonly bytes: Uint8Array;
  readonly type: string;
}

/** Finds a saved photo by its id; null if there is none. */
export type PhotoSource = (photoId: string, isThumbnail: boolean) => Promise<ServedPhoto | null>;

/** Serves the built page from `folder` and saved photos from `/photo/ID` (`?size=thumbnail`). Everything else is refused. */
export function serveApp(folder: string, findPhoto: PhotoSource): void {
  protocol.handle('app', async (request) => {
    const url = new URL(request.url);
    if (url.host !== 'bundle' || !['GET', 'HEAD'].includes(request.method)) return refusal(403);
    const photo = /^\/photo\/([0-9a-f-]{36})$/.exec(url.pathname);
    if (photo !== null)
      return answerPhoto(await findPhoto(photo[1] ?? '', url.searchParams.get('size') === 'thumbnail'));
    return answerFile(folder, url.pathname);
  });
}

async function answerFile(folder: string, pathname: string): Promise<Response> {
  const file = path.resolve(folder, `.${decodeURIComponent(pathname === '/' ? '/index.html' : pathname)}`);
  const type = TYPES[path.extname(file)];
  if (!file.startsWith(folder + path.sep) || type === undefined) return refusal(403);
  try {
    return respond(await readFile(file), type);
  } catch {
    return refusal(404);
  }
}

function answerPhoto(photo: ServedPhoto | null): Response {
  return photo === null ? refusal(404) : respond(photo.bytes, photo.type);
}

function respond(bytes: Uint8Array, type: string): Response {
  return new Response(new Uint8Array(bytes), {
    headers: {
      'content-type': type,
      'content-security-policy': CONTENT_SECURITY_POLICY,
      'x-content-type-options': 'nosniff',
    },
  });
}

function refusal(status: 403 | 404): Response {
  return new Response(null, { status });
}
