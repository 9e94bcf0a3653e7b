/** Something to say about readings: a code with the facts that its sentence needs; sentences are in words. */
export interface Note {
  code: string;
  facts?: Readonly<Record<string, number | string>>;
}
