import type { ReactNode } from "react";

const shapes = {
  /** an eight-sided plate, as on a stop sign */
  error: (
    <>
      <path d="M5 1h6l4 4v6l-4 4H5l-4-4V5z" fill="currentColor" stroke="none" />
      <path d="M5.5 5.5l5 5m0-5l-5 5" stroke="var(--paper)" />
    </>
  ),
  warning: (
    <>
      <path d="M8 1.5 15 14H1z" />
      <path d="M8 6v4m0 1.6v.6" />
    </>
  ),
  note: (
    <>
      <circle cx="8" cy="8" r="6.5" />
      <path d="M8 7v4.6M8 4v.8" />
    </>
  ),
  ok: <path d="M2 8.5l4 4 8-9" />,
  saving: <path d="M2 8h.1M8 8h.1M14 8h.1" strokeWidth="3" />,
  undo: <path d="M6 3 2.5 6.5 6 10M3 6.5h6.5a4 4 0 0 1 0 8H6" />,
  redo: <path d="M10 3l3.5 3.5L10 10m3-3.5H6.5a4 4 0 0 0 0 8H10" />,
  help: (
    <>
      <path d="M5.4 5.6a2.6 2.6 0 1 1 4 2.3C8.5 8.5 8 9 8 10" />
      <path d="M8 12.2v.6" />
    </>
  ),
  close: <path d="M3 3l10 10M13 3 3 13" />,
  chevron: <path d="M4 6l4 4 4-4" />,
  up: <path d="M8 13V3M4 7l4-4 4 4" />,
  down: <path d="M8 3v10M4 9l4 4 4-4" />,
  plus: <path d="M8 2.5v11M2.5 8h11" />,
  remove: <path d="M2.5 8h11" />,
  sheet: (
    <>
      <path d="M3 1.5h7l3 3v10H3z" />
      <path d="M9.5 1.5v3.5H13M5.5 8h5M5.5 11h5" />
    </>
  ),
  book: (
    <path d="M8 3.5C6.5 2.3 4.5 2 1.5 2v10.5c3 0 5 .3 6.5 1.5 1.5-1.2 3.5-1.5 6.5-1.5V2c-3 0-5 .3-6.5 1.5zm0 0V14" />
  ),
  sun: (
    <>
      <circle cx="8" cy="8" r="3" />
      <path d="M8 1v2M8 13v2M1 8h2M13 8h2M3 3l1.4 1.4M11.6 11.6 13 13M13 3l-1.4 1.4M4.4 11.6 3 13" />
    </>
  ),
  /** half light, half dark */
  system: (
    <>
      <circle cx="8" cy="8" r="6" />
      <path d="M8 2a6 6 0 0 1 0 12z" fill="currentColor" />
    </>
  ),
  moon: <path d="M13.5 9.5A6 6 0 0 1 6.5 2.5a6 6 0 1 0 7 7z" />,
  caution: <path d="M9.5 1 4 9h3.5L6 15l6-8.5H8.5z" />,
  folder: <path d="M1.5 13V3h5L8 5h6.5v8z" />,
} satisfies Record<string, ReactNode>;

export type IconName = keyof typeof shapes;

/** An icon. It never carries a meaning alone, so it is hidden from screen readers. */
export function Icon({ name, size = 16 }: { name: IconName; size?: number }) {
  return (
    <svg
      width={size}
      height={size}
      viewBox="0 0 16 16"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
      strokeLinecap="square"
      aria-hidden="true"
      focusable="false"
    >
      {shapes[name]}
    </svg>
  );
}
