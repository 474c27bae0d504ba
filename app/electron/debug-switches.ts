/**
 * Words on the command line that open a way into the running program: its inspector, or the page's remote debugging.
 * Anyone who can start the packaged program with one could read the workbook through it.
 */
const SWITCHES =
  /^--?(inspect|inspect-brk|inspect-port|inspect-wait|inspect-publish-uid|debug|debug-brk|debug-port|remote-debugging-port|remote-debugging-pipe|remote-allow-origins|js-flags|no-sandbox|disable-web-security)(=|$)/i;

/** The first such word, or null. */
export const debugSwitchIn = (argv: readonly string[]): string | null =>
  argv.slice(1).find((word) => SWITCHES.test(word)) ?? null;
