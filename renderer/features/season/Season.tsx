import { Button } from '@mui/material';
import { useState } from 'react';
import { Page } from '../../components/Page.tsx';
import { useWords } from '../../components/words.ts';
import { Compare } from './Compare.tsx';
import { Plan } from './Plan.tsx';

export function Season() {
  const { season: words } = useWords();
  const [tab, setTab] = useState<'compare' | 'plan'>('compare');
  const tabButton = (one: 'compare' | 'plan') => (
    <Button variant={tab === one ? 'contained' : 'outlined'} aria-pressed={tab === one} onClick={() => setTab(one)}>
      {words[one]}
    </Button>
  );
  return (
    <Page
      title={words.title}
      acts={
        <>
          {tabButton('compare')}
          {tabButton('plan')}
        </>
      }
    >
      {tab === 'compare' ? <Compare /> : <Plan />}
    </Page>
  );
}
