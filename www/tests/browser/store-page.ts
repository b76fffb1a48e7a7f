// A page for the tests of the store: the store and nothing else, and a way past it to the database.

import * as store from "../../src/store/jobs";

declare global {
  var store: typeof import("../../src/store/jobs");
  var shelf: import("../../src/store/jobs").Shelf;
  var job: import("../../src/store/jobs").OpenJob;
  /** Runs `work` on object stores of the database, as somebody else would. */
  var rawly: (names: readonly string[], work: (...stores: IDBObjectStore[]) => IDBRequest | void) => Promise<unknown>;
}

globalThis.store = store;
globalThis.rawly = (names, work) =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open("coldwright jobs");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const database = opening.result;
      const transaction = database.transaction(names, "readwrite");
      const request = work(...names.map((name) => transaction.objectStore(name)));
      transaction.onabort = () => reject(transaction.error);
      transaction.oncomplete = () => {
        database.close();
        resolve(request?.result);
      };
    };
  });
