import { STOCK_TEST_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { StockLine } from '../../../shared/contract/stock.ts';
import { perCent } from '../../../shared/text/share-text.ts';
import { useWeights, useWords } from '../../components/words.ts';

/** The weight, and how far from the mean of the yard where enough hives stand behind that mean. */
export function HoneyText({ honey }: { honey: StockLine['honey'] }) {
  const { stock: words } = useWords();
  const weights = useWeights();
  if (!honey) return <span className="soft">{words.notTested}</span>;
  const { season, kilograms, mean, colonies, enough } = honey;
  const deviation = kilograms - mean;
  const signed = `${deviation < 0 ? '−' : '+'}${weights.text(Math.abs(deviation))}`;
  return (
    <>
      <span className="nowrap">{words.honeyFigure(weights.text(kilograms), season)}</span>
      <br />
      <span className="soft small">
        {enough
          ? words.honeyBeside(signed, perCent(kilograms / mean), colonies)
          : words.honeyFew(colonies, STOCK_TEST_ROWS.honeyColonies.fewest)}
      </span>
    </>
  );
}
