import { ask } from '../client/client.ts';
import { useAnswer, useChange } from '../client/hooks.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { useWords } from './words.ts';

/** Who types now; nothing where nobody has been named in the settings. */
export function WriterChoice() {
  const { settings: words } = useWords();
  const { data: settings } = useAnswer(['settings'], () => ask.settings.getSettings.query());
  const save = useChange(ask.settings.saveSettings.mutate);
  if (!settings || settings.people.length === 0) return null;
  return (
    <ChoiceField
      label={words.writer}
      value={settings.writer ?? ''}
      choices={[{ value: '', text: words.nobody }, ...settings.people.map((name) => ({ value: name, text: name }))]}
      onChange={(name) => void save.run({ writer: name || null })}
    />
  );
}
