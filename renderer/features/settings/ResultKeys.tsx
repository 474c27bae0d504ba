import type { Settings } from '../../../shared/contract/settings.ts';
import type { LookResult } from '../../../shared/model/look.ts';
import { RESULT_KEYS, resultKeysWith } from '../../../shared/model/look-key.ts';
import { ask } from '../../client/client.ts';
import { useChange } from '../../client/hooks.ts';
import { ChangeLines } from '../../components/ChangeLines.tsx';
import { DataTable } from '../../components/DataTable.tsx';
import { useFollowing } from '../../components/following.ts';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** The letter of each result, as it is pressed in the evening and ringed on the yard sheet. */
export function ResultKeys({ settings }: { settings: Settings }) {
  const { settings: words, looks } = useWords();
  const save = useChange(ask.settings.saveSettings.mutate);
  const [typed, setTyped] = useFollowing(lettersOf(settings));
  const refused = save.state.refusal !== null;
  const change = (result: LookResult, letter: string) => {
    const letters = { ...typed, [result]: letter.toUpperCase() };
    setTyped(letters);
    if (letter.trim() !== '') void save.run({ resultLetters: changedOf(letters) });
  };
  return (
    <Section title={words.resultKeys}>
      <p className="soft small">{words.resultKeysLine}</p>
      <DataTable
        caption={words.resultKeys}
        rows={RESULT_KEYS}
        rowKey={(one) => one.result}
        columns={[
          { key: 'result', title: words.resultColumns.result, head: true, cell: ({ result }) => looks[result].name },
          {
            key: 'key',
            title: words.resultColumns.key,
            cell: ({ result }) => (
              <input
                className="control"
                style={{ width: '3.4rem', textAlign: 'center' }}
                maxLength={1}
                autoComplete="off"
                aria-label={words.resultKeyOf(looks[result].name)}
                aria-invalid={refused && isShared(typed, result) ? true : undefined}
                value={typed[result]}
                onFocus={(event) => event.target.select()}
                onChange={(event) => change(result, event.target.value)}
                onBlur={() => {
                  if (typed[result].trim() === '') setTyped({ ...typed, [result]: lettersOf(settings)[result] });
                }}
              />
            ),
          },
          { key: 'digit', title: words.resultColumns.digit, cell: ({ digit }) => <kbd>{digit}</kbd> },
        ]}
      />
      <ChangeLines {...save.state} />
    </Section>
  );
}

type Letters = Readonly<Record<LookResult, string>>;

const lettersOf = (settings: Settings): Letters =>
  Object.fromEntries(resultKeysWith(settings.resultLetters).map(({ result, key }) => [result, key])) as Letters;

/** Only what differs from the usual letters is kept. */
const changedOf = (letters: Letters): Settings['resultLetters'] =>
  Object.fromEntries(
    RESULT_KEYS.filter(({ result, key }) => letters[result] !== key && letters[result].trim() !== '').map(
      ({ result }) => [result, letters[result]],
    ),
  );

const isShared = (letters: Letters, result: LookResult): boolean =>
  Object.values(letters).filter((letter) => letter === letters[result]).length > 1;
