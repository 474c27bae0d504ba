import { Menu } from 'electron';
import type { Core } from '../../main/api/core.ts';
import type { Language } from '../../shared/kernel/language.ts';
import { wordsOf } from '../../shared/text/catalogue.ts';
import type { CommandLine } from './command-line.ts';
import { menuTemplate } from './menu.ts';

/** Shows the menu in the core's language; the answer looks again, and builds it anew when another one is spoken. */
export function keepMenu(core: Pick<Core, 'language'>, commands: CommandLine): () => void {
  let shown: Language | null = null;
  const look = () => {
    const language = core.language();
    if (language === shown) return;
    shown = language;
    const template = menuTemplate((command) => commands.choose(command), process.platform, wordsOf(language).menu);
    Menu.setApplicationMenu(Menu.buildFromTemplate(template));
  };
  look();
  return look;
}
