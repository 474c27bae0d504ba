import type { Session } from 'electron';

/** No permission is ever granted, nothing is downloaded (papers are saved by the program), and no request leaves for anything but the program's own page and its blobs. */
export function denyEverything(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.on('will-download', (event) => event.preventDefault());
  session.webRequest.onBeforeRequest((details, answer) => answer({ cancel: !isLocal(details.url) }));
}

const isLocal = (url: string): boolean => /^(app|blob|data|devtools):/.test(url);
