import { config } from "zod";

/**
 * Imported before anything else of a page or a worker: schemas try, as they are made, whether they may compile
 * themselves, and a page's security policy forbids that.
 */
config({ jitless: true });
