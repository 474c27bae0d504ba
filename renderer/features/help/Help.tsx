import { useState } from 'react';
import { takeFirstFocus } from '../../components/first-focus.ts';
import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useWords } from '../../components/words.ts';
import { holding } from './find-help.ts';

/** Words, keys, how figures are reckoned, and the cautions of the trade. All of it is in the program; nothing is fetched. */
export function Help() {
  const { help, glossary, cautions } = useWords();
  const [typed, setTyped] = useState('');
  const words = holding(glossary.list, typed, ({ word, meaning }) => `${word} ${meaning}`);
  const keys = holding(help.keys, typed, ([key, meaning]) => `${key} ${meaning}`);
  const figures = holding(help.figures, typed, String);
  const care = holding(cautions.list, typed, String);
  const found = words.length + keys.length + figures.length + care.length;
  return (
    <Page title={help.title}>
      <div style={{ maxWidth: 420, marginBottom: 22 }}>
        <TextField
          label={help.search}
          value={typed}
          onChange={setTyped}
          hint={typed.trim() === '' ? help.searchHint : found === 0 ? help.nothing : help.found(found)}
          inputRef={takeFirstFocus}
        />
      </div>
      <div className="columns">
        <div>
          <Pairs title={glossary.title} pairs={words.map(({ word, meaning }) => [word, meaning])} />
          <Lines title={help.figuresTitle} lines={figures} />
        </div>
        <div>
          <Lines title={cautions.title} lines={care} />
          <Pairs title={help.keysTitle} pairs={keys} asKeys />
        </div>
      </div>
    </Page>
  );
}

/** What nothing was found in is left out. */
function Pairs({
  title,
  pairs,
  asKeys = false,
}: {
  title: string;
  pairs: readonly (readonly [string, string])[];
  asKeys?: boolean;
}) {
  if (pairs.length === 0) return null;
  return (
    <Section title={title}>
      <dl className="facts">
        {pairs.map(([name, meaning]) => (
          <div key={name} style={{ display: 'contents' }}>
            <dt>{asKeys ? <kbd>{name}</kbd> : name}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

function Lines({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <Section title={title}>
      <ul>
        {lines.map((line) => (
          <li key={line} style={{ marginBottom: 8 }}>
            {line}
          </li>
        ))}
      </ul>
    </Section>
  );
}
