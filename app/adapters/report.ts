/** Our own mistakes go to the terminal the program was started from; nothing is sent anywhere. */
export function reportToConsole(error: unknown): void {
  console.error('Ripecell:', error);
}
