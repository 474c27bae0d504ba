import type { FormEvent } from 'react';
import type { Settings } from '../../../shared/contract/settings.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines, useProblemOf } from '../../components/ChangeLines.tsx';
import { useFollowing } from '../../components/following.ts';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { WriterChoice } from '../../components/WriterChoice.tsx';
import { useWords } from '../../components/words.ts';
import { SaveActs } from './SaveActs.tsx';

/** Names of those who type in this workbook, and who types now. */
export function People({ settings }: { settings: Settings }) {
  const { settings: words } = useWords();
  const [names, setNames] = useFollowing(settings.people.join(', '));
  const save = useChange(ask.settings.saveSettings.mutate);
  const problem = useProblemOf(save.state.refusal);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void save.run({ people: namesIn(names) });
  };
  return (
    <Section title={words.people}>
      <form className="stack" style={{ maxWidth: 420 }} onSubmit={submit}>
        <TextField
          label={words.peopleNames}
          value={names}
          onChange={setNames}
          hint={words.peopleHint}
          problem={problem('people')}
        />
        <SaveActs state={save.state} />
        <ChangeLines {...save.state} ownFields={['people']} />
        <WriterChoice />
      </form>
    </Section>
  );
}

const namesIn = (text: string): string[] => [
  ...new Set(
    text
      .split(',')
      .map((name) => name.trim())
      .filter(Boolean),
  ),
];
