import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';

/** Words, keys, how figures are reckoned, and the cautions of the trade. All of it is in the program; nothing is fetched. */
export function Help() {
  const { help, glossary, cautions } = useWords();
  return (
    <Page title={help.title}>
      <div className="columns">
        <div>
          <Section title={glossary.title}>
            <dl className="facts">
              {glossary.list.map(({ word, meaning }) => (
                <div key={word} style={{ display: 'contents' }}>
                  <dt>{word}</dt>
                  <dd>{meaning}</dd>
                </div>
              ))}
            </dl>
          </Section>
          <Section title={help.figuresTitle}>
            <ul>
              {help.figures.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </Section>
        </div>
        <div>
          <Section title={cautions.title}>
            <ul>
              {cautions.list.map((line) => (
                <li key={line} style={{ marginBottom: 8 }}>
                  {line}
                </li>
              ))}
            </ul>
          </Section>
          <Section title={help.keysTitle}>
            <dl className="facts">
              {help.keys.map(([key, meaning]) => (
                <div key={key} style={{ display: 'contents' }}>
                  <dt>
                    <kbd>{key}</kbd>
                  </dt>
                  <dd>{meaning}</dd>
                </div>
              ))}
            </dl>
          </Section>
        </div>
      </div>
    </Page>
  );
}
