import type { FoundAtStart } from "../../src/workbench/keeping/findAtStart";
import { type JournalRecord, prunedKeys, readableRecords } from "../../src/workbench/keeping/journal";
import type { JournalOutcome, KeepingDatabase } from "../../src/workbench/keeping/keepingDatabase";
import { type NewVersion, recordsOf } from "../../src/workbench/keeping/version";

/** What outlives every tab. */
export class Disk {
  journal = new Map<number, string>();
  versions = new Map<string, NewVersion>();
  /** thrown by what writes while it is set */
  fail: unknown = null;
  /** characters that journal and versions may come to; more is refused as a full disk */
  room = Number.POSITIVE_INFINITY;

  records(): JournalRecord[] {
    return readableRecords([...this.journal].map(([revision, text]) => ({ revision, text })));
  }
  private size() {
    const texts = [...this.journal.values(), ...[...this.versions.values()].map(({ text }) => text)];
    return texts.reduce((sum, text) => sum + text.length, 0);
  }
  /** Does what the work does, or nothing at all of it. */
  write<Value>(work: () => Value): Value {
    if (this.fail) throw this.fail;
    const before = [new Map(this.journal), new Map(this.versions)] as const;
    const value = work();
    if (this.size() <= this.room) return value;
    [this.journal, this.versions] = before;
    throw new DOMException("no room", "QuotaExceededError");
  }
}

interface Waiting {
  work(): void;
  cancelled: boolean;
}

/** A tab's database over a disk: transactions in order, each done when its turn comes. */
export class FakeDatabase implements KeepingDatabase {
  /** while set, what is asked waits for `next` */
  byHand = false;
  private waiting: Waiting[] = [];
  private listeners = new Set<() => void>();

  constructor(readonly disk: Disk) {}

  found(): FoundAtStart {
    return { database: this, records: this.disk.records(), trouble: null };
  }
  get pending() {
    return this.waiting.length;
  }
  /** Does the first thing that waits. @param answered false where it is done and its tab never hears of it */
  next(answered = true) {
    const first = this.waiting.shift();
    if (!first) return;
    if (!answered) first.cancelled = true;
    first.work();
  }
  /** The tab is gone: what waits is not done, and nothing is answered. */
  kill() {
    this.waiting = [];
    this.byHand = true;
  }
  lose() {
    for (const listener of this.listeners) listener();
  }
  private ask<Value>(work: () => Value): Promise<Value> {
    return new Promise((resolve, reject) => {
      const waiting: Waiting = {
        cancelled: false,
        work: () => {
          try {
            const value = work();
            if (!waiting.cancelled) resolve(value);
          } catch (error) {
            if (!waiting.cancelled) reject(error);
          }
        },
      };
      this.waiting.push(waiting);
      if (!this.byHand) queueMicrotask(() => this.next());
    });
  }
  readJournal = () => this.ask(() => this.disk.records());
  writeJournal: KeepingDatabase["writeJournal"] = ({ record, base, follows, versions }) =>
    this.ask((): JournalOutcome => {
      const [head] = this.disk.records();
      if (head && head.revision > follows) return { kind: "conflict", head };
      return this.disk.write(() => {
        for (const key of prunedKeys([...this.disk.journal.keys()], record.text.length))
          this.disk.journal.delete(key as number);
        if (base) this.disk.journal.set(base.revision, base.text);
        this.disk.journal.set(record.revision, record.text);
        for (const version of versions) this.disk.versions.set(version.id, version);
        return { kind: "written" };
      });
    });
  keepVersions: KeepingDatabase["keepVersions"] = (versions) =>
    this.ask(() =>
      this.disk.write(() => {
        for (const version of versions) this.disk.versions.set(version.id, version);
      }),
    );
  listVersions = () =>
    this.ask(() => [...this.disk.versions.values()].map((version) => recordsOf(version).summary));
  readVersion = (id: string) =>
    this.ask(() => {
      const version = this.disk.versions.get(id);
      return version ? recordsOf(version).version : null;
    });
  removeVersions = (ids: readonly string[]) =>
    this.ask(() => {
      for (const id of ids) this.disk.versions.delete(id);
    });
  endOffer = (id: string) =>
    this.ask(() => {
      const version = this.disk.versions.get(id);
      if (version) this.disk.versions.set(id, { ...version, offered: false });
    });
  listenForLoss(listener: () => void) {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
