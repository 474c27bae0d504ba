import type { tableWords as english } from '../english/tables-out.ts';
import type { Translation } from '../translation.ts';
import { tableTitles } from './tables-out.ts';

/** What nearly every table has. */
const ROW = { id: 'Name der Zeile auf Dauer; in jeder Datei derselbe.', note: 'Notiz.' };
const STRENGTH = 'Stärke, von kaum Bienen bis voll.';
const FOOD = 'Futter, von kaum etwas bis reichlich.';

export const tableWords: Translation<typeof english> = {
  hives: {
    title: tableTitles.hives ?? '',
    columns: {
      ...ROW,
      code: 'Kürzel des Volks.',
      name: 'Sein Name, wenn es einen hat.',
      yard: 'Stand, auf dem es steht.',
      place: 'Wo auf dem Stand.',
      mother_line: 'Linie, aus der seine Königin kommt.',
      roles: 'Wozu es diente, nach Saison.',
      ended_on: 'Tag, an dem es aufhörte, ein eigenes Volk zu sein; leer, solange es lebt.',
    },
  },
  batches: {
    title: tableTitles.batches ?? '',
    columns: {
      ...ROW,
      code: 'Saison und Nummer darin.',
      season: 'Saison.',
      method: 'Art, zu den Zellen zu kommen.',
      own_method: 'Ihre eigene Kopie des Verfahrens, wenn eine benutzt wurde.',
      comb: 'Wabe, die das Zuchtvolk bekam, bei Serien mit Bogenschnitt.',
      builder_type: 'Wie das Pflegevolk eingerichtet war.',
      breeder: 'Volk, dessen Larven gezogen wurden.',
      builder: 'Volk, das die Zellen pflegte.',
      anchor_step: 'Schritt, dessen Tag bekannt ist.',
      anchor_on: 'Dieser Tag; alle anderen sind von ihm gerechnet.',
      larvae_given_on: 'Tag der Larvengabe, gerechnet.',
      larva_age_from_h: 'Alter der jüngsten Larve bei der Gabe; leer = die übliche Spanne des Verfahrens.',
      larva_age_to_h: 'Alter der ältesten Larve bei der Gabe.',
      sealed_celsius: 'Wärme um die verdeckelten Zellen; leer = im Volk.',
      cells_planned: 'Geplante Zellen.',
      practice: 'Ob sie zur Übung oder für einen Kurs war.',
      lesson: 'Was für nächstes Jahr zu merken ist.',
      closed_on: 'Tag, an dem sie abgeschlossen wurde; leer, solange sie offen ist.',
    },
  },
  counts: {
    title: tableTitles.counts ?? '',
    columns: {
      ...ROW,
      batch: 'Serie.',
      bar: 'Nummer der Leiste in der Serie.',
      stage:
        'Stufe, die gezählt wurde. Weggenommen = angenommene Zellen, die vor dem Verdeckeln absichtlich weggenommen wurden.',
      cells: 'Zellen; 0 = gezählt, und es waren keine. Keine Zeile = nicht gezählt.',
      counted_on: 'Tag der Zählung.',
    },
  },
  'steps-done': {
    title: tableTitles['steps-done'] ?? '',
    columns: { ...ROW, batch: 'Serie.', step: 'Schritt ihres Zeitplans.', done_on: 'Tag, an dem er erledigt wurde.' },
  },
  'steps-dropped': {
    title: tableTitles['steps-dropped'] ?? '',
    columns: {
      ...ROW,
      batch: 'Serie.',
      step: 'Schritt ihres Zeitplans.',
      dropped_on: 'Tag, an dem es gesagt wurde.',
      reason: 'Warum; leer, wenn kein Grund genannt wurde.',
    },
  },
  losses: {
    title: tableTitles.losses ?? '',
    columns: {
      ...ROW,
      batch: 'Serie.',
      stage:
        'Stufe, die nicht erreicht wurde: angenommen, verdeckelt, geschlüpft oder durch verdeckelte Arbeiterinnenbrut erwiesen.',
      reason: 'Warum, wie gesagt wurde. Verluste ohne Zeile haben keinen bekannten Grund.',
      cells: 'Aus diesem Grund verlorene Zellen oder Königinnen.',
    },
  },
  sightings: {
    title: tableTitles.sightings ?? '',
    columns: {
      ...ROW,
      batch: 'Serie.',
      what: 'Was wirklich zu sehen war.',
      seen_on: 'Tag, an dem es zu sehen war.',
      from_h: 'Alter oder Zeit, die es zeigte, jüngste; leer bei Arten ohne eine.',
      to_h: 'Dasselbe, älteste.',
    },
  },
  boxes: {
    title: tableTitles.boxes ?? '',
    columns: {
      ...ROW,
      code: 'Kürzel des Kästchens.',
      yard: 'Stand, auf dem es steht.',
      row: 'Reihe oder Merkzeichen.',
      walk_order: 'Platz im Rundgang.',
      box_type: 'Bauart des Kästchens.',
      retired_on: 'Tag, an dem es außer Gebrauch kam; leer, solange es benutzt wird.',
    },
  },
  placements: {
    title: tableTitles.placements ?? '',
    columns: {
      id: ROW.id,
      box: 'Kästchen, in das die Zelle gesetzt wurde.',
      batch: 'Serie, aus der die Zelle kam.',
      bar: 'Nummer ihrer Leiste, wenn bekannt.',
      placed_on: 'Tag, an dem sie eingesetzt wurde.',
      ended_on: 'Tag, an dem das Kästchen frei wurde; leer, solange es die Zelle oder Königin enthält.',
      end_reason: 'Wie es endete.',
    },
  },
  looks: {
    title: tableTitles.looks ?? '',
    columns: {
      ...ROW,
      box: 'Kästchen, das geöffnet wurde.',
      batch: 'Serie der Zelle oder Königin, nach der gesehen wurde; leer, wenn keine darin war.',
      placement_id: 'Zeile der Tabelle placements, nach der gesehen wurde.',
      looked_on: 'Tag der Kontrolle.',
      result: 'Was zu sehen war. not-looked ist weder Erfolg noch Misserfolg.',
      strength: STRENGTH,
      food: FOOD,
    },
  },
  queens: {
    title: tableTitles.queens ?? '',
    columns: {
      ...ROW,
      number: 'Geburtsjahr und Nummer darin.',
      born_in: 'Geburtsjahr; die Jahresfarbe folgt daraus.',
      batch: 'Serie, aus der sie kam.',
      born_in_box: 'Kästchen, in dem sie begattet wurde.',
      breeder: 'Volk ihrer Mutter.',
      mother: 'Nummer ihrer Mutter, wenn sie von Hand genannt wurde.',
      mother_line: 'Linie ihrer Mutter.',
      marked_on: 'Tag, an dem sie gezeichnet wurde.',
      first_eggs_on: 'Tag, an dem ihre ersten Eier zu sehen waren.',
      proved_on: 'Tag, an dem ihre verdeckelte Arbeiterinnenbrut zu sehen war.',
      place: 'Wo sie ist.',
      box: 'Kästchen, in dem sie ist.',
      hive: 'Volk, in dem sie ist.',
      gone_to: 'An wen sie ging.',
    },
  },
  'queen-moves': {
    title: tableTitles['queen-moves'] ?? '',
    columns: {
      ...ROW,
      queen: 'Nummer der Königin.',
      moved_on: 'Tag, an dem sie ging.',
      place: 'Wohin sie ging.',
      hive: 'Volk, in das sie gebracht wurde.',
      gone_to: 'An wen sie ging.',
      way: 'Wie sie zugesetzt wurde.',
      price: 'Preis, wie er aufgeschrieben wurde.',
    },
  },
  'queen-promises': {
    title: tableTitles['queen-promises'] ?? '',
    columns: {
      ...ROW,
      queen: 'Nummer der Königin.',
      promised_on: 'Tag, an dem sie versprochen wurde.',
      promised_to: 'An wen sie versprochen ist.',
      wanted_on: 'Tag, bis zu dem sie gewünscht ist; leer = für sie keiner gesagt.',
    },
  },
  'queen-feedback': {
    title: tableTitles['queen-feedback'] ?? '',
    columns: {
      ...ROW,
      queen: 'Nummer der Königin.',
      told_on: 'Tag, an dem es erzählt wurde.',
      told_by: 'Wer es erzählte.',
      outcome: 'Was aus ihr wurde.',
    },
  },
  'hive-looks': {
    title: tableTitles['hive-looks'] ?? '',
    columns: {
      id: ROW.id,
      hive: 'Volk, das geöffnet wurde.',
      looked_on: 'Tag der Kontrolle.',
      strength: STRENGTH,
      food: FOOD,
      note: 'Was zu sehen war.',
    },
  },
  'hive-moves': {
    title: tableTitles['hive-moves'] ?? '',
    columns: {
      ...ROW,
      hive: 'Volk.',
      moved_on: 'Tag, an dem es versetzt wurde.',
      from_yard: 'Stand, von dem es kam.',
      to_yard: 'Stand, auf den es kam.',
      place: 'Wo auf dem Stand.',
      paper: 'Genehmigung, Zeugnis oder Untersuchung.',
    },
  },
  feedings: {
    title: tableTitles.feedings ?? '',
    columns: {
      ...ROW,
      hive: 'Volk, wenn eines gefüttert wurde.',
      box: 'Begattungskästchen, wenn eines gefüttert wurde.',
      fed_on: 'Tag.',
      feed: 'Futter; Zuckerwasser ist Zucker zu Wasser nach Gewicht.',
      own_feed: 'Was es war, wenn es nicht in der Liste steht.',
      litres: 'Wie viel, wo es so gemessen wird; leer, wenn nicht bekannt.',
      kilograms: 'Wie viel, wo es gewogen wird; leer, wenn nicht bekannt.',
    },
  },
  treatments: {
    title: tableTitles.treatments ?? '',
    columns: {
      ...ROW,
      hive: 'Volk.',
      from_on: 'Erster Tag.',
      to_on: 'Letzter Tag; leer, solange sie dauert oder nicht bekannt ist.',
      product: 'Mittel, wie es aufgeschrieben wurde.',
      amount: 'Menge.',
      reason: 'Grund.',
      paper: 'Nummer einer Verschreibung, Charge des Mittels oder anderes Papier.',
    },
  },
  'hive-scores': {
    title: tableTitles['hive-scores'] ?? '',
    columns: {
      ...ROW,
      hive: 'Volk.',
      trait: 'Eigenschaft.',
      scored_on: 'Tag der Bewertung.',
      score: 'Bewertung in halben Punkten, der höchste der beste.',
    },
  },
  'hive-tests': {
    title: tableTitles['hive-tests'] ?? '',
    columns: {
      ...ROW,
      hive: 'Volk.',
      kind: 'Test.',
      tested_on: 'Tag des Tests.',
      counted: 'Ausgeräumte Zellen, Milben oder Kilogramm Honig, je nach Test.',
      out_of: 'Geprüfte Zellen, gewaschene Bienen oder Tage unter dem Volk; leer bei Honig.',
      hours: 'Zeit vom Anstechen oder Gefrieren bis zum Zählen.',
    },
  },
  tallies: {
    title: tableTitles.tallies ?? '',
    columns: {
      batch: 'Serie.',
      given: 'Dem Pflegevolk gegebene Zellen; leer = nicht bekannt.',
      taken: 'Von den Bienen angenommene Zellen.',
      entered_sealing: 'Angenommene Zellen weniger die absichtlich weggenommenen.',
      sealed: 'Verdeckelte Zellen.',
      placed: 'In Kästchen gesetzte Zellen.',
      emergence_known: 'Eingesetzte Zellen, von denen bekannt ist, ob eine Königin schlüpfte.',
      emerged: 'Davon geschlüpfte Königinnen.',
      mating_known: 'Geschlüpfte Königinnen, von denen bekannt ist, ob sie dazu kamen, Arbeiterinnenbrut zu legen.',
      proved: 'Davon Königinnen, deren verdeckelte Arbeiterinnenbrut zu sehen war.',
      laying: 'Bisher in Eilage gesehene Königinnen, erwiesen oder nicht.',
    },
  },
  weather: {
    title: tableTitles.weather ?? '',
    columns: {
      day: 'Tag.',
      max_celsius: 'Höchste Temperatur des Tages.',
      wind_kmh: 'Wind.',
      rain: 'Ob es zur Flugzeit regnete, 11 bis 16 Uhr.',
      flying_hours: 'Stunden zwischen 11 und 16 Uhr, in denen Bienen gut flogen.',
    },
  },
  wishes: {
    title: tableTitles.wishes ?? '',
    columns: {
      ...ROW,
      for_whom: 'Wer sie möchte; leer = für eigene Völker.',
      queens: 'Gewünschte Königinnen in Eilage.',
      wanted_on: 'Tag, bis zu dem sie gewünscht sind.',
      settled_on: 'Tag, von dem an der Wunsch als erfüllt oder hinfällig gilt.',
    },
  },
};
