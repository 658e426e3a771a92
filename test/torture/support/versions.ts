/** Runs in the page: the length of each version's text in the database, in characters. */
export async function versionLengths(): Promise<number[]> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open("coilwright/keeping");
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  return new Promise((resolve, reject) => {
    const reading = database.transaction("versions").objectStore("versions").getAll();
    reading.onsuccess = () => {
      database.close();
      resolve(reading.result.map(({ text }: { text: string }) => text.length));
    };
    reading.onerror = () => reject(reading.error);
  });
}
