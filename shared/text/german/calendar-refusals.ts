import type { Day } from '../../kernel/day.ts';
import type { Step } from '../../model/step.ts';
import type { CalendarFact, CalendarRefusal, Contradiction } from '../../model/timetable.ts';
import { celsiusText } from '../degrees.ts';
import { calendarRefusalSentence as english } from '../english/calendar-refusals.ts';
import { SIGHTING_WORDS } from './sightings.ts';
import { STEP_TITLES } from './step-titles.ts';

const title = (step: Step): string => `„${STEP_TITLES[step] ?? step}“`;
const sighting = (what: keyof typeof SIGHTING_WORDS) => SIGHTING_WORDS[what]?.name ?? what;
const asked = (what: keyof typeof SIGHTING_WORDS) => SIGHTING_WORDS[what]?.ask ?? what;

export function calendarRefusalSentence(
  refusal: CalendarRefusal,
  dayText: (day: Day) => string,
  degrees: (celsius: number) => string = (celsius) => celsiusText(celsius, 'celsius', 'de'),
): string {
  switch (refusal.kind) {
    case 'method-unknown':
      return `Verfahren: Dieses Programm kennt „${refusal.method}“ nicht; die Datei stammt vielleicht aus einer neueren Version. Wählen Sie eines der Verfahren aus der Liste.`;
    case 'step-not-in-method':
      return `Erster Tag: ${title(refusal.step)} gehört nicht zu diesem Verfahren. Wählen Sie einen Schritt seines Zeitplans, etwa den Tag der Larvengabe.`;
    case 'larva-age-turned-round':
      return `Alter der Larven: Die jüngste (${refusal.from} Stunden) ist älter als die älteste (${refusal.to} Stunden). Geben Sie die kleinere Zahl zuerst ein.`;
    case 'larva-age-impossible':
      return `Alter der Larven: Aus einer Larve von ${refusal.hours} Stunden wird keine Königin. Geben Sie Stunden seit dem Schlupf aus dem Ei ein, 0 bis ${refusal.most}.`;
    case 'temperature-impossible':
      return `Wärme der verdeckelten Zellen: ${degrees(refusal.celsius)} liegt außerhalb dessen, was sich rechnen lässt. Geben Sie ${degrees(refusal.least)} bis ${degrees(refusal.most)} ein, oder lassen Sie das Feld für Zellen im Volk leer.`;
    case 'seen-before-laying':
      return `Tag der Beobachtung: ${sighting(refusal.what)} am ${dayText(refusal.on)} kann nicht sein, weil die Eier frühestens am ${dayText(refusal.laidFrom)} gelegt wurden. Berichtigen Sie diesen Tag oder den ersten Tag der Serie.`;
    case 'seen-needs-hours':
      return `Stunden: Für „${asked(refusal.what)}“ wird das Alter gebraucht. Wählen Sie eine Größe, oder geben Sie die Stunden seit dem Schlupf aus dem Ei ein.`;
    case 'seen-hours-turned-round':
      return `Stunden: Für „${asked(refusal.what)}“ kommt die kleinere Zahl zuerst. Vertauschen Sie die beiden Zahlen.`;
    case 'done-out-of-order':
      return `Tag der Erledigung: ${title(refusal.step)} am ${dayText(refusal.on)} liegt vor ${title(refusal.after)} am ${dayText(refusal.afterOn)}. Berichtigen Sie einen der beiden Tage.`;
    case 'moved-out-of-order':
      return `Neuer Tag: ${title(refusal.step)} lässt sich nicht auf ${dayText(refusal.on)} legen, weil ${title(refusal.after)} am ${dayText(refusal.afterOn)} erledigt wurde. Wählen Sie diesen Tag oder einen späteren.`;
    case 'window-turned-round':
      return `Ihr Verfahren: Die Tage von ${title(refusal.step)} sind verdreht (frühestens ${refusal.earliestDay}, erwartet ${refusal.expectedDay}, spätestens ${refusal.latestDay}). Bringen Sie sie in steigende Reihenfolge.`;
    default:
      return english(refusal, dayText, degrees);
  }
}

function factWords(fact: CalendarFact, dayText: (day: Day) => string): string {
  if (fact.kind === 'step') return `${title(fact.step)} am ${dayText(fact.on)}`;
  if (fact.kind === 'larva-age')
    return `Larven von ${fact.hours[0]} bis ${fact.hours[1]} Stunden am ${dayText(fact.on)}`;
  return `${sighting(fact.what)}, gesehen ${dayText(fact.on)}`;
}

export function contradictionSentence({ one, other }: Contradiction, dayText: (day: Day) => string): string {
  return `Diese können nicht beide stimmen: ${factWords(one, dayText)}; und ${factWords(other, dayText)}. Bis Sie eine berichtigen, folgen die Tage der älteren Brut, damit keine Königin heraus ist, bevor Sie nachsehen.`;
}
