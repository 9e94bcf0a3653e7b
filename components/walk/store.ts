import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** What a walk keeps on the machine while it is under way: texts at once, pictures when they are in. */
export interface WalkStore {
  /** Whether what is kept outlives the page. */
  isLasting: boolean;
  read(key: string): string | null;
  write(key: string, text: string): void;
  drop(key: string): void;
  picture(key: string): Promise<Blob | null>;
  keepPicture(key: string, picture: Blob): Promise<void>;
  dropPicture(key: string): Promise<void>;
}

interface Pictures extends DBSchema {
  pictures: { key: string; value: Blob };
}

const prefix = "grounds-walk/";

/** In the browser: texts in local storage, which is written before the next tap; pictures in its database. */
export class BrowserWalkStore implements WalkStore {
  readonly isLasting = true;
  private readonly texts: Storage;
  private database: Promise<IDBPDatabase<Pictures>> | null = null;

  constructor(texts: Storage) {
    this.texts = texts;
  }

  read(key: string): string | null {
    return this.texts.getItem(prefix + key);
  }

  write(key: string, text: string): void {
    try {
      this.texts.setItem(prefix + key, text);
    } catch {
      // full: the walk goes on, and what was kept before is still there
    }
  }

  drop(key: string): void {
    this.texts.removeItem(prefix + key);
  }

  async picture(key: string): Promise<Blob | null> {
    return (await (await this.pictures()).get("pictures", key)) ?? null;
  }

  async keepPicture(key: string, picture: Blob): Promise<void> {
    await (await this.pictures()).put("pictures", picture, key);
  }

  async dropPicture(key: string): Promise<void> {
    await (await this.pictures()).delete("pictures", key);
  }

  private pictures(): Promise<IDBPDatabase<Pictures>> {
    this.database ??= openDB<Pictures>("grounds-walk", 1, {
      upgrade: (fresh) => void fresh.createObjectStore("pictures"),
    });
    return this.database;
  }
}

/** For browsers that keep nothing, and for tests: lasts as long as the page. */
export class PassingWalkStore implements WalkStore {
  readonly isLasting = false;
  private readonly texts = new Map<string, string>();
  private readonly pictures = new Map<string, Blob>();

  read(key: string): string | null {
    return this.texts.get(key) ?? null;
  }

  write(key: string, text: string): void {
    this.texts.set(key, text);
  }

  drop(key: string): void {
    this.texts.delete(key);
  }

  async picture(key: string): Promise<Blob | null> {
    return this.pictures.get(key) ?? null;
  }

  async keepPicture(key: string, picture: Blob): Promise<void> {
    this.pictures.set(key, picture);
  }

  async dropPicture(key: string): Promise<void> {
    this.pictures.delete(key);
  }
}

/** The browser's store where it keeps anything, else one that lasts as long as the page. */
export function walkStore(): WalkStore {
  try {
    const probe = `${prefix}probe`;
    localStorage.setItem(probe, "1");
    localStorage.removeItem(probe);
    return new BrowserWalkStore(localStorage);
  } catch {
    return new PassingWalkStore();
  }
}
