export function ensureBuilt(): void;
export function vite(...args: string[]): string[];
