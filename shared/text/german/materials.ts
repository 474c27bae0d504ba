import type { MATERIAL_WORDS as english } from '../english/materials.ts';
import type { Translation } from '../translation.ts';

export const MATERIAL_WORDS: Translation<typeof english> = {
  'sugar syrup': { name: 'Zuckerlösung', line: 'ein halber bis ein Liter am Tag, ein Teil Zucker auf ein Teil Wasser' },
  pollen: { name: 'Pollen', line: 'eine volle Wabe, oder 100 bis 250 g Pollenteig alle vier bis fünf Tage' },
  'starter-strip frame': { name: 'Rahmen mit Anfangsstreifen', line: 'zwei bis vier spitze Streifen Mittelwand' },
  'empty worker comb': { name: 'leere Arbeiterinnenwabe', line: 'dunkel zum Umlarven, hell zum Schneiden' },
  'laying cage': { name: 'Legekasten', line: 'mit seinen Stopfen' },
  'queen cage': { name: 'Königinnenkäfig', line: 'einer' },
  'transfer tool': { name: 'Umlarvlöffel', line: 'und gutes Licht' },
  'cups and bar': { name: 'Näpfchen und Leiste', line: 'ein Viertel mehr Näpfchen, als Zellen gewünscht sind' },
  'sharp knife': { name: 'scharfes Messer', line: 'und heißes Wasser' },
  beeswax: { name: 'Bienenwachs', line: 'im Wasserbad geschmolzen' },
  'damp cloth': { name: 'feuchtes Tuch', line: 'zum Abdecken der Leiste' },
  'cell punch': { name: 'Stanze', line: 'leicht angewärmt' },
  'spacer frame': { name: 'Abstandsrahmen', line: 'drei bis vier Zentimeter hoch' },
  'starter box': { name: 'belüfteter Anbrüterkasten', line: 'fünf Waben breit' },
  'queen excluder': { name: 'Absperrgitter', line: 'ohne Lücken' },
  'divider board': { name: 'Trennbrett mit Schieber', line: 'eines' },
  'screened floor': { name: 'Gitterboden mit Flugloch', line: 'einer' },
  'cell cages': { name: 'Schlüpfkäfige', line: 'einer je Zelle' },
  'mating boxes': { name: 'Begattungskästchen', line: 'eines je Zelle' },
  fondant: { name: 'Futterteig', line: '250 bis 500 g für jedes Mini-Kästchen' },
  'water spray': { name: 'Wassersprüher', line: 'einer' },
  labels: { name: 'Etiketten', line: 'eines je Kästchen und ein paar mehr' },
  'marking pen': { name: 'Zeichenstift', line: 'in der Farbe des Jahres' },
};
