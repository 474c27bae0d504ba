import type { sources as english } from '../english/sources.ts';
import type { Translation } from '../translation.ts';

/** What is told of a source in shared/biology, by its English words. Titles of publications stay in their language. */
const TOLD: Readonly<Record<string, string>> = {
  'common practice, no source': 'übliche Praxis, ohne Quelle',
  'common practice, no source, from memory': 'übliche Praxis, ohne Quelle, aus dem Gedächtnis',
  'common practice': 'übliche Praxis',
  'the days are common practice, no source': 'die Tage sind übliche Praxis, ohne Quelle',
  'from memory, no source seen': 'aus dem Gedächtnis, keine Quelle gesehen',
  'reckoned from the days of development': 'gerechnet aus den Tagen der Entwicklung',
  'development table of americasbeekeeper.com': 'Entwicklungstabelle von americasbeekeeper.com',
  'Winston 1987 from memory': 'Winston 1987, aus dem Gedächtnis',
  'Welsh Beekeepers’ Association leaflet on queen cells':
    'Merkblatt der Welsh Beekeepers’ Association über Weiselzellen',
  'Welsh Beekeepers’ Association leaflet on queen cells, as quoted at hearth.com':
    'Merkblatt der Welsh Beekeepers’ Association über Weiselzellen, zitiert auf hearth.com',
  'study of emergency cells in 13 colonies (Fell & Morse 1984, authors from memory), abstract at beekeepingforum.co.uk':
    'Untersuchung von Nachschaffungszellen in 13 Völkern (Fell & Morse 1984, Verfasser aus dem Gedächtnis), Zusammenfassung auf beekeepingforum.co.uk',
  'reckoned from the larval ages in the study of emergency cells in 13 colonies (Fell & Morse 1984, authors from memory), abstract at beekeepingforum.co.uk':
    'gerechnet aus dem Alter der Larven in der Untersuchung von Nachschaffungszellen in 13 Völkern (Fell & Morse 1984, Verfasser aus dem Gedächtnis), Zusammenfassung auf beekeepingforum.co.uk',
  'queen-rearing timetable at dave-cushman.net': 'Zeitplan der Königinnenzucht auf dave-cushman.net',
  'batch diary with 42 cells, rosecombapiaries.com, 2012':
    'Tagebuch einer Serie mit 42 Zellen, rosecombapiaries.com, 2012',
  'course demonstration, rosecombapiaries.com, 2012': 'Vorführung in einem Kurs, rosecombapiaries.com, 2012',
  'note on queenright cell raising at theapiarist.org':
    'Notiz auf theapiarist.org, wie ein weiselrichtiges Volk Zellen pflegt',
  'swarm-box instructions of kimesapiary.com and mayfarmsllc.com':
    'Anleitungen zum Schwarmkasten von kimesapiary.com und mayfarmsllc.com',
  'emgoldbeekeepers.com (after an article of April 2005)': 'emgoldbeekeepers.com (nach einem Artikel vom April 2005)',
  'course notes at grljournals.in': 'Kursunterlagen auf grljournals.in',
  'elgon.es, description of the starter board with the queen above':
    'elgon.es, Beschreibung des Trennbodens mit der Königin darüber',
  'description of 1911 at bushfarms.com': 'Beschreibung von 1911 auf bushfarms.com',
  'Hamdan, notes on rearing queens': 'Hamdan, Notizen zur Königinnenzucht',
  'page on the cell punch at dave-cushman.net': 'Seite über das Ausstanzen auf dave-cushman.net',
  'grafting notes at dave-cushman.net': 'Notizen zum Umlarven auf dave-cushman.net',
  'trunchbeekeeping.co.uk on secondary swarms': 'trunchbeekeeping.co.uk über Nachschwärme',
  'international marking code as printed on tbbk.co.uk and seven more pages':
    'internationale Jahresfarben, wie sie auf tbbk.co.uk und sieben weiteren Seiten stehen',
  'thewalrusandthehoneybee.com, flight days 2015 to 2021': 'thewalrusandthehoneybee.com, Flugtage 2015 bis 2021',
  'Wang et al. 2016, PLoS ONE 11:e0154547, found worker prepupae most easily chilled':
    'Wang et al. 2016, PLoS ONE 11:e0154547: Vorpuppen von Arbeiterinnen verkühlen am leichtesten',
  'de Bruyn 2015, Bee Craft April and May': 'de Bruyn 2015, Bee Craft, April und Mai',
  'words of steps 2 and 1 from memory': 'Wortlaut der Stufen 2 und 1 aus dem Gedächtnis',
  'words of steps 3 to 1 from memory': 'Wortlaut der Stufen 3 bis 1 aus dem Gedächtnis',
  'Burley 2007, thesis, Virginia Tech': 'Burley 2007, Dissertation, Virginia Tech',
  'USDA-ARS as quoted at gilroybeekeepers.org': 'USDA-ARS, zitiert auf gilroybeekeepers.org',
};

const toldOne = (source: string): string => (TOLD[source] ?? source).replace(/, section (?=[\d.]+$)/, ', Abschnitt ');

export const sources: Translation<typeof english> = {
  told: (list: string) => list.split('; ').map(toldOne).join('; '),
};
