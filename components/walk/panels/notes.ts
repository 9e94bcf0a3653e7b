import { Panel } from "./panel.ts";

/** A panel whose typing is kept under names of its own until it is taken. */
export abstract class NotesPanel extends Panel {
  protected note(name: string): string {
    return this.walk.atStop(this.stop.key).notes?.[name] ?? "";
  }

  protected keepNote(name: string, text: string): void {
    const { notes = {} } = this.walk.atStop(this.stop.key);
    this.walk.keepStop(this.stop.key, { notes: { ...notes, [name]: text } });
  }

  protected keepTyped(name: string): (event: Event) => void {
    return (event) => this.keepNote(name, (event.target as HTMLInputElement).value);
  }
}
