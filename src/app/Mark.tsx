/** The app's own mark: a flat spiral seen from above, its tap marked. */
export function Mark({ size = 26 }: { size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 32 32" fill="none" aria-hidden="true" focusable="false">
      <path
        d="M16 16a2 2 0 0 1 4 0 4.5 4.5 0 0 1-9 0 7 7 0 0 1 14 0 9.5 9.5 0 0 1-19 0 12 12 0 0 1 24 0"
        stroke="var(--copper)"
        strokeWidth="2"
      />
      <path d="M16 1v8" stroke="var(--winding)" strokeWidth="2" />
      <circle cx="30" cy="16" r="2" fill="var(--live)" />
    </svg>
  );
}
