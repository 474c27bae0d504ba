import { STOCK_TEST_ROWS } from '../../../shared/biology/stock-traits.ts';
import type { StockLine } from '../../../shared/contract/stock.ts';
import { perCent } from '../../../shared/text/share-text.ts';
import { useWords } from '../../components/words.ts';

/** Kilograms, and how far from the mean of the yard where enough hives stand behind that mean. */
export function HoneyText({ honey }: { honey: StockLine['honey'] }) {
  const { stock: words } = useWords();
  if (!honey) return <span className="soft">{words.notTested}</span>;
  const { season, kilograms, mean, colonies, enough } = honey;
  const deviation = kilograms - mean;
  const signed = `${deviation < 0 ? '−' : '+'}${Math.abs(deviation).toFixed(1)}`;
  return (
    <>
      <span className="nowrap">{words.honeyFigure(kilograms.toFixed(1), season)}</span>
      <br />
      <span className="soft small">
        {enough
          ? words.honeyBeside(signed, perCent(kilograms / mean), colonies)
          : words.honeyFew(colonies, STOCK_TEST_ROWS.honeyColonies.fewest)}
      </span>
    </>
  );
}
