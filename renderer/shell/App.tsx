import { Button } from '@mui/material';
import { useColorScheme } from '@mui/material/styles';
import { type ComponentProps, lazy, Suspense, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Settings } from '../../shared/contract/settings.ts';
import type { Command } from '../../shared/contract/shell.ts';
import type { WorkbookState } from '../../shared/contract/workbook.ts';
import { type Language, languageOf } from '../../shared/kernel/language.ts';
import { resultKeysWith } from '../../shared/model/look-key.ts';
import { type FirstWords, firstWords } from '../../shared/text/english/first-words.ts';
import { loadFirstWords, loadWords, wordsHere } from '../../shared/text/load-words.ts';
import { ask } from '../client/client.ts';
import { useDrafts } from '../client/drafts.ts';
import { useAnswer, useOtherWorkbook } from '../client/hooks.ts';
import { PartFailed } from '../components/PartFailed.tsx';
import { readRoute, useRoute } from '../components/routes.ts';
import { type Fetched, useFetched } from '../components/use-fetched.ts';
import { useDays, useFirstWords, type Wording, WordingContext } from '../components/words.ts';
import { followCommand, useCommands } from './commands.ts';
import { ErrorPage } from './ErrorPage.tsx';
import { SaveTrouble } from './SaveTrouble.tsx';
import { SideBar } from './SideBar.tsx';
import { Strips } from './Strips.tsx';
import { type Ahead, TypedAhead } from './TypedAhead.tsx';
import { UndoButton } from './UndoButton.tsx';
import { UndoLine } from './UndoLine.tsx';
import { useUndo } from './use-undo.ts';
import { viewOf } from './views.tsx';

const FirstStart = lazy(() => import('./FirstStart.tsx').then((m) => ({ default: m.FirstStart })));

/** Asks what is open, and shows the first start or the frame with its page. */
export function App() {
  const state = useAnswer(['workbook'], () => ask.workbook.getWorkbookState.query());
  const isOpen = Boolean(state.data?.open);
  const settings = useAnswer(['settings', state.data?.open?.file], () => ask.settings.getSettings.query(), isOpen);
  useAppearance(settings.data);
  const words = useWordsOf(spokenLanguage(state.data, settings));
  const wording = useWording(words ?? firstWords, settings.data, state.data?.open?.today);
  if (state.isError) return <p className="first-paint">{firstWords.frame.notReached}</p>;
  if (!state.data || !words) return <p className="first-paint">{firstWords.frame.product}</p>;
  const { open } = state.data;
  return (
    <WordingContext value={wording}>
      <Suspense fallback={<p className="first-paint">{firstWords.frame.product}</p>}>
        {open ? <Frame open={open} /> : <FirstStart state={state.data} />}
      </Suspense>
    </WordingContext>
  );
}

/** The language to show; null as long as it is not known which. */
function spokenLanguage(
  state: WorkbookState | undefined,
  settings: { readonly data: Settings | undefined; readonly isPending: boolean },
): Language | null {
  if (!state || (state.open && settings.isPending)) return null;
  return languageOf(settings.data?.language ?? 'system', state.computerLanguage);
}

/** The first words of a language once they are here, and until then those shown before; null before the first. */
function useWordsOf(language: Language | null): FirstWords | null {
  const [words, setWords] = useState<FirstWords | null>(null);
  const shown = words?.language ?? null;
  useEffect(() => {
    if (!language || language === shown) return;
    let isWanted = true;
    // A page that shows all words keeps them until those of the other language are here.
    const arrived = shown !== null && wordsHere(shown) ? loadWords(language) : loadFirstWords(language);
    void arrived
      .catch(() => firstWords)
      .then((loaded) => {
        if (isWanted) setWords(loaded);
      });
    return () => {
      isWanted = false;
    };
  }, [language, shown]);
  useEffect(() => {
    if (words) document.documentElement.lang = words.language;
  }, [words]);
  return words;
}

/** True once the first page stands and the browser has time for what a key or a click may call for. */
function useIdle(): boolean {
  const [idle, setIdle] = useState(false);
  useEffect(() => {
    const handle = requestIdleCallback(() => setIdle(true), { timeout: 500 });
    return () => cancelIdleCallback(handle);
  }, []);
  return idle;
}

/** Made anew only when a choice changes, so that long tables are not drawn again for nothing. */
function useWording(words: FirstWords, settings: Settings | undefined, today: string | undefined): Wording {
  return useMemo(
    () => ({
      words,
      dateOrder: settings?.dateOrder ?? 'day-first',
      weekStart: settings?.weekStart ?? 'monday',
      temperature: settings?.temperature ?? 'celsius',
      measures: settings?.measures ?? 'metric',
      letterKeys: settings?.letterKeys ?? true,
      resultKeys: resultKeysWith(settings?.resultLetters ?? {}),
      today: today ?? '1970-01-01',
    }),
    [words, settings, today],
  );
}

/** Theme, size of the text and density, as the person chose them. */
function useAppearance(settings: Settings | undefined): void {
  const { setMode } = useColorScheme();
  useEffect(() => {
    if (!settings) return;
    setMode(settings.theme);
    document.documentElement.style.fontSize = `${settings.textSizePercent}%`;
    document.documentElement.dataset.density = settings.density;
  }, [settings, setMode]);
}

function Frame({ open }: { open: NonNullable<WorkbookState['open']> }) {
  const days = useDays();
  const words = useFirstWords();
  const route = useRoute();
  const [goingTo, setGoingTo] = useState(false);
  const [printing, setPrinting] = useState(false);
  const leave = useOtherWorkbook(() => ask.workbook.closeWorkbook.mutate());
  const demo = useOtherWorkbook(() => ask.workbook.openDemo.mutate());
  const practice = useOtherWorkbook(() => ask.workbook.openPractice.mutate());
  const { turn, ...undone } = useUndo();
  const answer = useCallback(
    (command: Command) => {
      if (followCommand(command)) return;
      if (command === 'undo' || command === 'redo') void turn(command);
      else if (command === 'print-view') printView(() => setPrinting(true));
      else if (command === 'go-to') setGoingTo(true);
      else if (command === 'open-demo') void demo.run(undefined);
      else if (command === 'open-practice') void practice.run(undefined);
      else void leave.run(undefined);
    },
    [demo.run, leave.run, practice.run, turn],
  );
  useCommands(answer);
  useFocusOnTurn(`${open.file} ${route.parts.join('/')}`);
  // Asked for with the first page, so that no form waits for it.
  useDrafts();
  const idle = useIdle();
  const places = useFetched(() => import('./GoTo.tsx'), goingTo || idle);
  const choice = useFetched(() => import('./PrintChoice.tsx'), printing);
  const view = viewOf(route);
  return (
    <>
      <button type="button" className="skip" onClick={skipToPage}>
        {words.frame.skip}
      </button>
      <Strips open={open} />
      {open.readOnly ? null : <SaveTrouble />}
      <div className="frame">
        <SideBar place={route.parts[0] ?? 'today'} open={open} />
        <main className="main" id="page">
          <p className="print-only">
            {open.name}, {days.full(open.today)}
          </p>
          <TopLine open={open} onGoTo={() => setGoingTo(true)} onUndo={() => void turn('undo')} />
          <ErrorPage key={route.parts.join('/')}>
            <Suspense fallback={<p role="status">{words.frame.loading}</p>}>{view ?? <NoSuchPage />}</Suspense>
          </ErrorPage>
        </main>
      </div>
      <UndoLine {...undone} onTurn={(way) => void turn(way)} onClose={undone.forget} />
      {printing && choice.part ? <choice.part.PrintChoice onClose={() => setPrinting(false)} /> : null}
      {printing && choice.failed ? <Failed onAgain={choice.tryAgain} onLeave={() => setPrinting(false)} /> : null}
      {goingTo ? <GoingTo places={places} onClose={() => setGoingTo(false)} onCommand={answer} /> : null}
    </>
  );
}

interface GoingToProps {
  readonly places: Fetched<typeof import('./GoTo.tsx')>;
  readonly onClose: () => void;
  readonly onCommand: (command: Command) => void;
}

/** Go to, and what was typed before it was here. */
function GoingTo({ places, onClose, onCommand }: GoingToProps) {
  const [typed, setTyped] = useState<Ahead>({ letters: '', entered: false });
  if (places.part) return <places.part.GoTo begun={typed} onClose={onClose} onCommand={onCommand} />;
  if (places.failed) return <Failed onAgain={places.tryAgain} onLeave={onClose} />;
  return <TypedAhead typed={typed} onType={setTyped} onClose={onClose} />;
}

/** Over the page, so that it is in sight wherever the key was pressed. */
const Failed = (props: ComponentProps<typeof PartFailed>) => (
  <div className="undo-line">
    <PartFailed {...props} />
  </div>
);

/** Today has its own paper, so it asks which is meant; any other view is printed as it stands. */
function printView(choose: () => void): void {
  if (readRoute(window.location.hash).parts[0] === 'today') choose();
  else window.print();
}

function skipToPage(): void {
  document.querySelector<HTMLElement>('main h1')?.focus();
}

/**
 * A page begins at its top, also the first one after a button far down was pressed. After a turn to another page, or
 * another workbook, its first field has the focus, where it names one, or else its title.
 */
function useFocusOnTurn(address: string): void {
  const last = useRef(address);
  useEffect(() => {
    window.scrollTo(0, 0);
    if (last.current === address) return;
    last.current = address;
    requestAnimationFrame(() => {
      // The new page may have taken the focus already, and the person may be a key further.
      const at = document.activeElement;
      if (at?.closest('main') && !at.closest('.topline')) return;
      if (document.querySelector('[role="dialog"]')) return;
      document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true });
    });
  }, [address]);
}

function NoSuchPage() {
  const { frame } = useFirstWords();
  return <p>{frame.notFound}</p>;
}

interface TopLineProps {
  readonly open: NonNullable<WorkbookState['open']>;
  readonly onGoTo: () => void;
  readonly onUndo: () => void;
}

function TopLine({ open, onGoTo, onUndo }: TopLineProps) {
  const { frame } = useFirstWords();
  const days = useDays();
  const time = open.savedAt
    ? new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(new Date(open.savedAt))
    : null;
  return (
    <div className="topline">
      <span className="left">{days.full(open.today)}</span>
      <Button variant="text" size="small" onClick={onGoTo}>
        {frame.goTo}… <kbd style={{ marginInlineStart: 6 }}>{frame.goToKeys}</kbd>
      </Button>
      {open.readOnly ? null : <UndoButton onUndo={onUndo} />}
      <span role="status">{open.readOnly ? frame.readOnly : time ? frame.savedAt(time) : frame.saved}</span>
    </div>
  );
}
