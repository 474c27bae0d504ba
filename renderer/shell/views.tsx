import { lazy, type ReactNode } from 'react';
import type { Route } from '../components/routes.ts';
import { Today } from '../features/today/Today.tsx';

const Batches = lazy(() => import('../features/batches/Batches.tsx').then((m) => ({ default: m.Batches })));
const BatchPage = lazy(() => import('../features/batches/BatchPage.tsx').then((m) => ({ default: m.BatchPage })));
const StartBatch = lazy(() => import('../features/batches/StartBatch.tsx').then((m) => ({ default: m.StartBatch })));
const StepSheet = lazy(() => import('../features/today/StepSheet.tsx').then((m) => ({ default: m.StepSheet })));
const Hives = lazy(() => import('../features/hives/Hives.tsx').then((m) => ({ default: m.Hives })));
const HivePage = lazy(() => import('../features/hives/HivePage.tsx').then((m) => ({ default: m.HivePage })));
const HiveLookSheet = lazy(() =>
  import('../features/hives/HiveLookSheet.tsx').then((m) => ({ default: m.HiveLookSheet })),
);
const FeedingSheet = lazy(() =>
  import('../features/feeding/FeedingSheet.tsx').then((m) => ({ default: m.FeedingSheet })),
);
const Stock = lazy(() => import('../features/hives/Stock.tsx').then((m) => ({ default: m.Stock })));
const Boxes = lazy(() => import('../features/boxes/Boxes.tsx').then((m) => ({ default: m.Boxes })));
const LookSheet = lazy(() => import('../features/boxes/LookSheet.tsx').then((m) => ({ default: m.LookSheet })));
const Queens = lazy(() => import('../features/queens/Queens.tsx').then((m) => ({ default: m.Queens })));
const QueenPage = lazy(() => import('../features/queens/QueenPage.tsx').then((m) => ({ default: m.QueenPage })));
const Notes = lazy(() => import('../features/notes/Notes.tsx').then((m) => ({ default: m.Notes })));
const Season = lazy(() => import('../features/season/Season.tsx').then((m) => ({ default: m.Season })));
const Labels = lazy(() => import('../features/print/Labels.tsx').then((m) => ({ default: m.Labels })));
const Files = lazy(() => import('../features/files/Files.tsx').then((m) => ({ default: m.Files })));
const Class = lazy(() => import('../features/class/Class.tsx').then((m) => ({ default: m.Class })));
const History = lazy(() => import('../features/history/History.tsx').then((m) => ({ default: m.History })));
const Settings = lazy(() => import('../features/settings/Settings.tsx').then((m) => ({ default: m.Settings })));
const Help = lazy(() => import('../features/help/Help.tsx').then((m) => ({ default: m.Help })));

/** The page for an address; null when there is none. Each but Today is fetched when it is first gone to. */
export function viewOf({ parts: [place, id], query }: Route): ReactNode {
  switch (place) {
    case 'today':
      return id === 'steps' ? <StepSheet /> : <Today />;
    case 'batches':
      if (id === 'new') return <StartBatch />;
      return id ? <BatchPage key={id} batchId={id} open={query.get('open')} /> : <Batches />;
    case 'hives':
      if (id === 'looks') return <HiveLookSheet />;
      if (id === 'feeding') return <FeedingSheet opensWith="hives" />;
      if (id === 'stock') return <Stock />;
      return id ? <HivePage key={id} colonyId={id} /> : <Hives />;
    case 'boxes':
      if (id === 'feeding')
        return <FeedingSheet key={query.toString()} opensWith="boxes" several={query.get('boxes')} />;
      return id === 'looks' ? (
        <LookSheet key={query.toString()} batchId={query.get('batch')} step={query.get('step')} />
      ) : (
        <Boxes key={id ?? query.get('box')} chosenBox={id ?? query.get('box')} />
      );
    case 'queens':
      return id ? <QueenPage key={id} queenId={id} /> : <Queens />;
    case 'notes':
      return <Notes key={query.get('text')} text={query.get('text') ?? ''} />;
    case 'season':
      return <Season tab={query.get('tab')} />;
    case 'print':
      return <Labels key={query.toString()} batchId={query.get('batch')} toSheet={query.has('sheet')} />;
    case 'files':
      return <Files />;
    case 'class':
      return <Class />;
    case 'history':
      return <History />;
    case 'settings':
      return <Settings />;
    case 'help':
      return <Help />;
    default:
      return null;
  }
}
