import type { SIGHTING_WORDS as english } from '../english/sightings.ts';
import type { Translation } from '../translation.ts';

export const SIGHTING_WORDS: Translation<typeof english> = {
  'eggs-first-seen': { name: 'erste Eier gesehen', ask: 'Die ersten Eier in der Wabe' },
  'larva-size': { name: 'Larven einer bestimmten Größe', ask: 'Wie groß die Larven sind' },
  'larva-age-note': { name: 'Alter der Larven', ask: 'Wie alt die Larven sind, nach eigenen Notizen' },
  'cells-open': { name: 'Zellen noch offen', ask: 'Die Zellen sind alle noch offen' },
  'cells-sealed': { name: 'Zellen verdeckelt', ask: 'Die Zellen sind verdeckelt' },
  'cells-browned': { name: 'Zellspitzen gebräunt', ask: 'Die Spitzen der Zellen sind braun und dünn' },
  'emerged-hole': { name: 'eine Königin ist geschlüpft', ask: 'Eine Zelle mit rundem Loch an der Spitze' },
  'queen-seen': { name: 'junge Königin gesehen', ask: 'Eine junge Königin' },
  'first-eggs': { name: 'erste Eier der jungen Königin', ask: 'Die ersten Eier der jungen Königin' },
  'sealed-brood': {
    name: 'verdeckelte Arbeiterinnenbrut',
    ask: 'Verdeckelte Arbeiterinnenbrut der jungen Königin',
  },
  'frame-not-drawn': { name: 'Rahmen nicht ausgebaut', ask: 'Der Rahmen ist noch nicht ausgebaut' },
  'comb-filled-with-nectar': { name: 'Wabe voll Nektar', ask: 'Die Wabe ist voller Nektar' },
  'larvae-too-old': { name: 'Larven zu alt', ask: 'Die Larven sind zu alt' },
  'cells-torn-down': { name: 'Zellen ausgebissen', ask: 'An der Seite ausgebissene Zellen' },
  'job-done-on-another-day': {
    name: 'Arbeit an einem anderen Tag getan',
    ask: 'Eine Arbeit wurde an einem anderen Tag getan',
  },
};
