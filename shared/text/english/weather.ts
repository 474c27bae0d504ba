import type { FlightRating } from '../../model/weather.ts';

/** The log of flight weather. */
export const weather = {
  title: 'Flight weather',
  line: 'Young queens fly out to mate on warm, sunny days with little wind, 11 to 16 h. Note what the days were like at the boxes; empty means not noted. Days on which no queen could fly put the late warning off.',
  columns: {
    day: 'Day',
    maxCelsius: 'Highest',
    windKmh: 'Wind, km/h',
    rain: 'Rain, 11 to 16 h',
    flyingHours: 'Good flying hours',
    rating: 'For flights',
  },
  rains: { unknown: '', yes: 'yes', no: 'no' },
  ratings: { good: 'good', possible: 'possible', poor: 'poor', unknown: 'not noted' } satisfies Record<
    FlightRating,
    string
  >,
  field: (what: string, day: string) => `${what}, ${day}`,
  problems: {
    maxCelsius: 'Highest: type degrees, such as 21.5, or leave it empty.',
    windKmh: 'Wind: type kilometres per hour, 0 to 200, or leave it empty.',
    flyingHours: 'Good flying hours: type hours, 0 to 5, or leave it empty.',
  },
  hint: 'A row is saved as you leave it.',
  fromFile: 'Take a table of a weather station in, under Files.',
  allDays: 'All days',
  flights: (from: string, to: string) => `Mating flights ${from} to ${to}.`,
  sofar: (parts: string) => `So far ${parts}.`,
  days: {
    good: (n: number) => `${n} good`,
    possible: (n: number) => `${n} possible`,
    poor: (n: number) => `${n} poor`,
    unknown: (n: number) => `${n} not noted`,
  } satisfies Record<FlightRating, (n: number) => string>,
  late: (day: string) => `Late from ${day}.`,
  putOff: (days: number, day: string) =>
    `Poor days put the late warning off by ${days === 1 ? 'a day' : `${days} days`}, to ${day}.`,
} as const;
