import { createTheme } from '@mui/material/styles';
import { type Colours, cssVariables, DARK, FONTS, LIGHT, PAPER } from './tokens.ts';

const palette = (colours: Colours) => ({
  palette: {
    primary: { main: colours.accent, contrastText: colours.onAccent },
    error: { main: colours.bad },
    background: { default: colours.paper, paper: colours.surface },
    text: { primary: colours.ink, secondary: colours.softInk },
    divider: colours.faintRule,
  },
});

/** Paper and ink: thin rules, no shadows, no ripple, nothing that moves for longer than 150 ms. */
export const theme = createTheme({
  cssVariables: { colorSchemeSelector: 'data-theme' },
  colorSchemes: { light: palette(LIGHT), dark: palette(DARK) },
  typography: {
    fontFamily: FONTS.text,
    htmlFontSize: 16,
    fontSize: 16,
    button: { textTransform: 'none', fontWeight: 600 },
  },
  shape: { borderRadius: 3 },
  transitions: {
    duration: {
      shortest: 90,
      shorter: 110,
      short: 130,
      standard: 150,
      complex: 150,
      enteringScreen: 150,
      leavingScreen: 120,
    },
  },
  components: {
    MuiButtonBase: { defaultProps: { disableRipple: true } },
    MuiButton: {
      defaultProps: { disableElevation: true },
      styleOverrides: { root: { minHeight: 40, paddingInline: 16, '&.Mui-focusVisible': { boxShadow: 'none' } } },
    },
    MuiDialog: {
      styleOverrides: { paper: { boxShadow: 'none', border: '1px solid var(--rule)', backgroundImage: 'none' } },
    },
    MuiCssBaseline: {
      styleOverrides: {
        ':root, [data-theme="light"]': cssVariables(LIGHT),
        '[data-theme="dark"]': cssVariables(DARK),
        '@media print': { ':root, [data-theme="light"], [data-theme="dark"]': cssVariables(PAPER) },
      },
    },
  },
});
