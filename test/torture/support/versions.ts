/** Runs in the page: versions in the database. */
export async function countVersions(): Promise<number> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open("coilwright/keeping");
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  return new Promise((resolve, reject) => {
    const counting = database.transaction("versions").objectStore("versions").count();
    counting.onsuccess = () => resolve(counting.result);
    counting.onerror = () => reject(counting.error);
  });
}
