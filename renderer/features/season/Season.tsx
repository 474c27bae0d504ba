import { Button } from '@mui/material';
import { Page } from '../../components/Page.tsx';
import { goTo } from '../../components/routes.ts';
import { useWords } from '../../components/words.ts';
import { Compare } from './Compare.tsx';
import { HowMany } from './HowMany.tsx';
import { Plan } from './Plan.tsx';
import { Report } from './Report.tsx';
import { Weather } from './Weather.tsx';

const PAGES = {
  compare: <Compare />,
  queens: <HowMany />,
  plan: <Plan />,
  weather: <Weather />,
  report: <Report />,
} as const;
type Tab = keyof typeof PAGES;
const TABS = Object.keys(PAGES) as Tab[];

/** What did better, how many to start, what is on, what the weather was, and the season on paper. */
export function Season({ tab }: { tab: string | null }) {
  const { season: words } = useWords();
  const open = TABS.find((one) => one === tab) ?? 'compare';
  return (
    <Page
      title={words.title}
      acts={TABS.map((one) => (
        <Button
          key={one}
          variant={one === open ? 'contained' : 'outlined'}
          aria-pressed={one === open}
          onClick={() => goTo(`/season?tab=${one}`)}
        >
          {words.tabs[one]}
        </Button>
      ))}
    >
      {PAGES[open]}
    </Page>
  );
}
