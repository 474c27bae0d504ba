import { DRONES } from '../../../shared/biology/drones.ts';
import { addDays, type Day } from '../../../shared/kernel/day.ts';

export interface DronePlan {
  /** Drone eggs laid later than this are too young when the queens fly. */
  readonly layLatest: Day;
  /** When drone comb should hang in the drone mothers. */
  readonly combInAdvised: Day;
}

/** Days by which drones must be begun for matings from `matingFrom`: 40 days from egg to mature, 60 advised. */
export function dronePlan(matingFrom: Day): DronePlan {
  return {
    layLatest: addDays(matingFrom, -DRONES.eggToMature.value),
    combInAdvised: addDays(matingFrom, -DRONES.combInAdvised.value),
  };
}

/** First day on which drones from eggs laid on `laidFrom` are mature. */
export const dronesMatureFrom = (laidFrom: Day): Day => addDays(laidFrom, DRONES.eggToMature.value);
