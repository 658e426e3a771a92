export function ensureBuilt(): Promise<void>;
export function vite(...args: string[]): string[];
