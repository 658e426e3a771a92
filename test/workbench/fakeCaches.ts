/** Cache storage in memory, as far as the program uses it; what it holds outlives every page. */
export class FakeCaches {
  readonly held = new Map<string, Map<string, Uint8Array<ArrayBuffer>>>();
  /** thrown by every call while it is set */
  fail: unknown = null;

  private answer<Value>(value: () => Value | Promise<Value>): Promise<Value> {
    return this.fail ? Promise.reject(this.fail) : Promise.resolve().then(value);
  }
  keys = () => this.answer(() => [...this.held.keys()]);
  delete = (name: string) => this.answer(() => this.held.delete(name));
  open = (name: string) =>
    this.answer(() => {
      const bodies = this.held.get(name) ?? new Map<string, Uint8Array<ArrayBuffer>>();
      this.held.set(name, bodies);
      return {
        put: (address: string, response: Response) =>
          this.answer(async () => void bodies.set(address, new Uint8Array(await response.arrayBuffer()))),
        match: (address: string) =>
          this.answer(() => {
            const body = bodies.get(address);
            return body && new Response(body);
          }),
        keys: () =>
          this.answer(() => [...bodies.keys()].map((address) => ({ url: `http://a.test${address}` }))),
        delete: (address: string) => this.answer(() => bodies.delete(address)),
      };
    });

  /** Addresses under a cache's name. */
  addresses(name: string): string[] {
    return [...(this.held.get(name)?.keys() ?? [])];
  }
}
