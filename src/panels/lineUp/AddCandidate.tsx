import { STOCK_TOP_LOADS } from "../../design/stockTopLoads";
import { Button } from "../../ui/Button";
import { useDesign, useShow } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { added, MOST_CANDIDATES, stockTopLoad, withCandidates } from "./candidates";
import styles from "./LineUp.module.css";

/** Adds the design's own top load or a stock size to the line-up. */
export function AddCandidate() {
  const topLoad = useDesign((design) => design.topLoad);
  const windingTop = useDesign((design) => design.secondary.baseHeight + design.secondary.windingLength);
  const full = useShow((show) => show.lineUp.candidates.length >= MOST_CANDIDATES);
  const add = (chosen: typeof topLoad) => workbench.editShow("add to line-up", withCandidates(added(chosen)));
  return (
    <div className={styles.adding}>
      <Button icon="plus" disabled={full} onClick={() => add(topLoad)}>
        This design's top load
      </Button>
      <label className={styles.stock}>
        Stock size
        <select
          disabled={full}
          value=""
          onChange={(event) => {
            const stock = STOCK_TOP_LOADS.find((each) => each.name === event.target.value);
            if (stock) add(stockTopLoad(stock, topLoad, windingTop));
          }}
        >
          <option value="">choose …</option>
          {STOCK_TOP_LOADS.map((stock) => (
            <option key={stock.name}>{stock.name}</option>
          ))}
        </select>
      </label>
      {full && (
        <p className={styles.hint}>At most four top loads can be compared: remove one to add another.</p>
      )}
    </div>
  );
}
