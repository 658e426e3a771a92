import { cautions } from "../../design/cautions";
import { Icon } from "../../ui/Icon";
import styles from "./Caution.module.css";

/** One of the cautions, where it matters. */
export function Caution({ code }: { code: string }) {
  const caution = cautions.find((each) => each.code === code);
  if (!caution) throw new Error(`no caution has the code “${code}”`);
  return (
    <p className={styles.caution}>
      <Icon name="warning" />
      <span>
        <strong>{caution.title}.</strong> {caution.sentence}
      </span>
    </p>
  );
}
