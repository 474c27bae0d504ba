import { useState } from 'react';
import type { ExportTables } from '../../../shared/contract/exchange.ts';
import { TABLE_KEYS } from '../../../shared/model/table-key.ts';
import { ask } from '../../client/client.ts';
import { saveMade } from '../../client/made-files.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { MakeActs } from './MakeActs.tsx';
import { useMaking } from './use-making.ts';

const FORMATS = ['xlsx', 'csv', 'json', 'schema'] as const;
const SEPARATORS = ['comma', 'semicolon'] as const;

/** Copies of the tables for spreadsheets and other programs. */
export function TablesOut() {
  const { tablesOut: words } = useWords();
  const [choice, setChoice] = useState<ExportTables>({
    format: 'xlsx',
    table: 'all',
    separator: localSeparator(),
    mark: true,
  });
  const making = useMaking(
    ask.files.exportTables.mutate,
    async (file) => (await saveMade(file, words)) ?? words.rows(file.rows),
  );
  return (
    <Section title={words.title}>
      <div className="stack">
        <p className="soft">{words.explain}</p>
        <ChoiceField
          label={words.format}
          value={choice.format}
          choices={FORMATS.map((value) => ({ value, text: words.formats[value] }))}
          onChange={(format) => setChoice({ ...choice, format })}
        />
        {choice.format === 'csv' ? <CsvChoices choice={choice} setChoice={setChoice} /> : null}
        <MakeActs label={words.save} making={making} onMake={() => void making.run(choice)} />
      </div>
    </Section>
  );
}

function CsvChoices({ choice, setChoice }: { choice: ExportTables; setChoice: (choice: ExportTables) => void }) {
  const { tablesOut: words, tableTitles } = useWords();
  return (
    <>
      <div className="columns">
        <ChoiceField
          label={words.table}
          value={choice.table}
          choices={[
            { value: 'all', text: words.all },
            ...TABLE_KEYS.map((value) => ({ value, text: tableTitles[value] })),
            { value: 'dictionary', text: words.dictionary },
          ]}
          onChange={(table) => setChoice({ ...choice, table })}
        />
        <ChoiceField
          label={words.separator}
          value={choice.separator}
          choices={SEPARATORS.map((value) => ({ value, text: words.separators[value] }))}
          onChange={(separator) => setChoice({ ...choice, separator })}
          hint={words.separatorHint}
        />
      </div>
      <label className="check" style={{ minHeight: 40 }}>
        <input
          type="checkbox"
          checked={choice.mark}
          onChange={(event) => setChoice({ ...choice, mark: event.target.checked })}
        />
        {words.mark}
      </label>
    </>
  );
}

/** Where numbers are written with a decimal comma, spreadsheets part columns by a semicolon. */
const localSeparator = (): ExportTables['separator'] =>
  new Intl.NumberFormat(undefined).format(1.5).includes(',') ? 'semicolon' : 'comma';
