import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-400.css';
import './theme/page.css';
import './theme/print.css';
import { CssBaseline } from '@mui/material';
import { ThemeProvider } from '@mui/material/styles';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './shell/App.tsx';
import { theme } from './theme/theme.ts';

/** The core is on this computer: a laptop without a network must not make questions wait. */
const local = { networkMode: 'always', retry: false } as const;
const queries = new QueryClient({ defaultOptions: { queries: { ...local, staleTime: 5_000 }, mutations: local } });

const root = document.getElementById('root');
if (!root) throw new Error('the page has no root');
createRoot(root).render(
  <StrictMode>
    <ThemeProvider theme={theme} defaultMode="system" disableTransitionOnChange>
      <CssBaseline />
      <QueryClientProvider client={queries}>
        <App />
      </QueryClientProvider>
    </ThemeProvider>
  </StrictMode>,
);
