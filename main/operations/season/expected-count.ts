import type { ExpectedCount } from '../../../shared/contract/forecast.ts';
import type { CountSummary } from '../../engine/yield/count-summary.ts';

/** A forecast as it travels. */
export const expectedCount = ({ mean, q05, q25, q75, q95, sure90 }: CountSummary): ExpectedCount => ({
  mean,
  lower: q05,
  upper: q95,
  likelyFrom: q25,
  likelyTo: q75,
  atLeast: sure90,
});
