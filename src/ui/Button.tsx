import type { ButtonHTMLAttributes, ReactNode } from "react";
import styles from "./Button.module.css";
import { Icon, type IconName } from "./Icon";

interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  kind?: "plain" | "filled" | "bare";
  icon?: IconName;
  children?: ReactNode;
}

export function Button({ kind = "plain", icon, children, className, ...rest }: ButtonProps) {
  return (
    <button type="button" className={`${styles.button} ${styles[kind]} ${className ?? ""}`} {...rest}>
      {icon && <Icon name={icon} />}
      {children}
    </button>
  );
}
