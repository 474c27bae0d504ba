import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import '@fontsource/atkinson-hyperlegible-mono/latin-400.css';
import './theme/page.css';
import './theme/print.css';
import createCache from '@emotion/cache';
import { CacheProvider } from '@emotion/react';
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

// The page's policy refuses code made from text. The schema library would try it once; this, read before its first schema,
// tells it not to (zod's `jitless`, without loading zod for it).
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });

/** Styles written at run time carry the word of this answer; the page's policy lets no others in. */
const nonce = document.querySelector<HTMLMetaElement>('meta[property="csp-nonce"]')?.nonce ?? '';
const styles = createCache({ key: 'css', nonce });

const root = document.getElementById('root');
if (!root) throw new Error('the page has no root');
createRoot(root).render(
  <StrictMode>
    <CacheProvider value={styles}>
      <ThemeProvider theme={theme} defaultMode="system">
        <CssBaseline />
        <QueryClientProvider client={queries}>
          <App />
        </QueryClientProvider>
      </ThemeProvider>
    </CacheProvider>
  </StrictMode>,
);
