import { count } from "./count.ts";

/** Tracing on a plan or photograph of one's own. */
export const traceWords = {
  choose: "Choose a plan or an aerial photograph",
  another: "Another picture",
  stays:
    "It stays on this machine and is never sent. JPEG, PNG or WebP, up to 40 MB. Drop it here, or choose it.",
  stepKnown: "1. A length you know",
  stepCorners: "2. The shape",
  markKnown: "Plan. Mark both ends of a length that you know.",
  markCorners: "Plan. Mark the corners in order round the edge.",
  keys: "Tap to mark, drag a mark to move it, two fingers to zoom. With keys: arrows move the cross (with Shift faster), Enter marks, Backspace takes back, + and − zoom.",
  nearer: "Nearer",
  further: "Further away",
  undo: "Undo",
  clear: "Clear",
  said: (known: number, corners: number) =>
    known < 2
      ? `${count(known)} of 2 ends of the known length are marked.`
      : `${corners === 1 ? "1 corner is" : `${count(corners)} corners are`} marked.`,
  around: (text: string) => `All round: ${text}.`,
  why: {
    "too-large": "That file is larger than 40 MB. Choose a smaller picture.",
    "no-picture": "That file holds no JPEG, PNG or WebP picture, whatever its name says.",
    unread: "That picture cannot be opened: it may be cut short.",
  },
} as const;
