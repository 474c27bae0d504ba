import { Button } from '@mui/material';
import { useState } from 'react';
import type { QueenLine } from '../../../shared/contract/queens.ts';
import { ask } from '../../client/client.ts';
import { useAnswer } from '../../client/hooks.ts';
import { ChoiceField } from '../../components/ChoiceField.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Page } from '../../components/Page.tsx';
import { Section } from '../../components/Section.tsx';
import { useWords } from '../../components/words.ts';
import { MotherLines } from './MotherLines.tsx';
import { QueenForm } from './QueenForm.tsx';
import { QueenTable } from './QueenTable.tsx';
import { QUEEN_CHOICES, type QueenFilter, queensShown } from './queens-shown.ts';

/** The register of queens with a number, or the same queens under their mothers. */
export function Queens() {
  const { queens: words } = useWords();
  const [adding, setAdding] = useState(false);
  const [asTree, setAsTree] = useState(false);
  const list = useAnswer(['queens'], () => ask.queens.listQueens.query());
  if (!list.data) return <Page title={words.title}>{null}</Page>;
  const acts = (
    <Button variant="contained" onClick={() => setAdding(true)}>
      {words.add}
    </Button>
  );
  return (
    <Page title={words.title} acts={acts}>
      {adding ? <QueenForm queen={null} lines={list.data} onClose={() => setAdding(false)} /> : null}
      {list.data.length === 0 ? <EmptyState title={words.empty} /> : null}
      {list.data.length === 0 ? null : asTree ? (
        <MotherLines choice={<ShownChoice asTree setAsTree={setAsTree} />} />
      ) : (
        <Register lines={list.data} choice={<ShownChoice asTree={false} setAsTree={setAsTree} />} />
      )}
    </Page>
  );
}

function ShownChoice({ asTree, setAsTree }: { asTree: boolean; setAsTree: (asTree: boolean) => void }) {
  const { queens: words } = useWords();
  return (
    <ChoiceField
      label={words.shown}
      value={asTree ? 'tree' : 'register'}
      choices={(['register', 'tree'] as const).map((value) => ({ value, text: words.shows[value] }))}
      onChange={(value) => setAsTree(value === 'tree')}
    />
  );
}

function Register({ lines, choice }: { lines: readonly QueenLine[]; choice: React.ReactNode }) {
  const { queens: words } = useWords();
  const [filter, setFilter] = useState<QueenFilter>({ place: 'all', line: '' });
  const shown = queensShown(lines, filter);
  const lineNames = [...new Set(lines.flatMap(({ queen }) => queen.motherLine ?? []))].toSorted();
  const acts = (
    <>
      {choice}
      <ChoiceField
        label={words.filter}
        value={filter.place}
        choices={QUEEN_CHOICES.map((value) => ({ value, text: words[value] }))}
        onChange={(place) => setFilter({ ...filter, place })}
      />
      <ChoiceField
        label={words.lineFilter}
        value={filter.line}
        choices={[{ value: '', text: words.anyLine }, ...lineNames.map((value) => ({ value, text: value }))]}
        onChange={(line) => setFilter({ ...filter, line })}
      />
    </>
  );
  return (
    <Section title={words.count(shown.length)} acts={acts}>
      <QueenTable lines={shown} />
    </Section>
  );
}
