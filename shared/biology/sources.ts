/**
 * Where the figures come from, named once. Most were read as abstracts or extracts; a book that could not be opened is
 * marked "from memory".
 */
const beebook = (section: string) => `Büchler et al. 2013, COLOSS BEEBOOK, J. Apic. Res. 52(1), section ${section}`;

export const CUSTOM = 'common practice, no source';
export const CUSTOM_DERIVED = 'common practice, no source; reckoned from the days of development';

export const BEEBOOK_LARVAE = beebook('2.1.2');
export const BEEBOOK_GRAFTING = beebook('2.1.5');
export const BEEBOOK_CAGED_LAYING = beebook('2.1.5');
export const BEEBOOK_CELLS = beebook('2.1.3.4');
export const BEEBOOK_CAPACITY = beebook('2.1.7');
export const BEEBOOK_MATING_PLACE = beebook('2.2.1');
export const BEEBOOK_MATING_BOXES = beebook('2.2.2');
export const BEEBOOK_INTRODUCTION = beebook('2.3.4');
export const BEEBOOK_TESTING = beebook('3.1.4');
export const BEEBOOK_DRONES = beebook('2.2.3');
export const SEALED_STAGE_WARMTH = 'Chuda-Mickiewicz & Samborski 2015, Acta Sci. Pol. Zootechnica 14(4)';
export const DEVELOPMENT_RANGES = 'development table of americasbeekeeper.com; Winston 1987 from memory';
export const SEALING_DAYS =
  'Welsh Beekeepers’ Association leaflet on queen cells, as quoted at hearth.com; liquisearch.com';
export const EMERGENCY_STUDY =
  'study of emergency cells in 13 colonies (Fell & Morse 1984, authors from memory), abstract at beekeepingforum.co.uk';
export const EMERGENCY_DERIVED = `reckoned from the larval ages in the ${EMERGENCY_STUDY}`;
export const CELL_TIMETABLE = 'queen-rearing timetable at dave-cushman.net';
export const CELL_DIARY = 'batch diary with 42 cells, rosecombapiaries.com, 2012';
export const COURSE_DEMO = 'course demonstration, rosecombapiaries.com, 2012';
export const OLD_LARVA_NOTE = 'note on queenright cell raising at theapiarist.org';
export const STARTER_BOX = 'swarm-box instructions of kimesapiary.com and mayfarmsllc.com';
export const OVER_EXCLUDER = 'Wilkinson & Brown 2002, National Bee Unit / CSL York';
export const DIVIDER_BOARD = 'emgoldbeekeepers.com (after an article of April 2005); course notes at grljournals.in';
export const PARKED_QUEEN = 'elgon.es, description of the starter board with the queen above';
export const CUT_COMB = 'Cowley 2008, Bee Craft; Mangum 2021, American Bee Journal';
export const COMB_STRIPS = 'Alley 1903; Smith, Queen Rearing Simplified';
export const FLAT_COMB = 'description of 1911 at bushfarms.com; Hamdan, notes on rearing queens';
export const CELL_PUNCH = 'page on the cell punch at dave-cushman.net; scottsbackyardbuzz';
export const DOUBLE_TRANSFER = 'grafting notes at dave-cushman.net; Santos et al. 2019';
export const CAGED_LAYING = `${BEEBOOK_CAGED_LAYING}; dave-cushman.net; Bee Craft August 2013`;
export const CELL_MOVING = `${BEEBOOK_CELLS}; de Bruyn 2015, Bee Craft; dave-cushman.net`;
export const BOX_CLOSING = 'dave-cushman.net; littleluceyfarm.com';
export const NUCLEUS_PRACTICE = 'killowen.com; purepisgahhoney.com';
export const MATING_FLIGHTS = 'Burley 2007, thesis, Virginia Tech; Heidinger et al. 2014, Insects 5:513';
export const FIRST_LOOK = BEEBOOK_MATING_BOXES;
export const GIVE_UP = 'norfolkbee.co.uk; common practice';
export const SWARM_CELLS =
  'Welsh Beekeepers’ Association leaflet on queen cells; trunchbeekeeping.co.uk on secondary swarms';
export const YEAR_COLOURS = 'international marking code as printed on tbbk.co.uk and seven more pages';
export const FLIGHT_PRACTICE = 'thewalrusandthehoneybee.com, flight days 2015 to 2021; norfolkbee.co.uk';
