// What this phone keeps: entries that are not yet sent, and the round as it was read last.

const NAME = "slotledger";
const ENTRIES = "entries";
const THINGS = "things";

function promised(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function opened() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore(ENTRIES, { keyPath: "n", autoIncrement: true });
      request.result.createObjectStore(THINGS);
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error("blocked"));
  });
}

/** Done only when it is on the phone's storage. */
function written(database, store, work) {
  return new Promise((resolve, reject) => {
    const change = database.transaction(store, "readwrite");
    let result;
    change.oncomplete = () => resolve(result);
    change.onabort = () => reject(change.error);
    const request = work(change.objectStore(store));
    if (request) {
      request.onsuccess = () => { result = request.result; };
    }
  });
}

class Storage {
  constructor(database) {
    this.database = database;
    this.lasts = true;
  }

  entries() {
    return promised(this.database.transaction(ENTRIES).objectStore(ENTRIES).getAll());
  }

  async add(entry) {
    entry.n = await written(this.database, ENTRIES, store => store.add(entry));
    return entry;
  }

  replace(entry) {
    return written(this.database, ENTRIES, store => store.put(entry));
  }

  remove(numbers) {
    return written(this.database, ENTRIES, store => { numbers.forEach(n => store.delete(n)); });
  }

  thing(name) {
    return promised(this.database.transaction(THINGS).objectStore(THINGS).get(name));
  }

  setThing(name, value) {
    return written(this.database, THINGS, store => store.put(value, name));
  }
}

/** For browsers that keep nothing; the page says so. */
class Memory {
  constructor() {
    this.lasts = false;
    this.list = [];
    this.things = new Map();
    this.next = 1;
  }

  async entries() { return [...this.list]; }

  async add(entry) {
    entry.n = this.next++;
    this.list.push(entry);
    return entry;
  }

  async replace(entry) { this.list = this.list.map(each => each.n === entry.n ? entry : each); }

  async remove(numbers) { this.list = this.list.filter(each => !numbers.includes(each.n)); }

  async thing(name) { return this.things.get(name); }

  async setThing(name, value) { this.things.set(name, value); }
}

export async function openStorage() {
  try {
    const storage = new Storage(await opened());
    await storage.entries();
    if (navigator.storage && navigator.storage.persist) {
      navigator.storage.persist();
    }
    return storage;
  } catch (unavailable) {
    return new Memory();
  }
}
