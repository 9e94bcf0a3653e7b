/** What a picture file may be, by its first bytes. */
const kinds: readonly { kind: string; begins: readonly number[]; at?: number }[] = [
  { kind: "image/png", begins: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
  { kind: "image/jpeg", begins: [0xff, 0xd8, 0xff] },
  { kind: "image/webp", begins: [0x57, 0x45, 0x42, 0x50], at: 8 },
];

export const largestPicture_bytes = 40_000_000;

/** The kind of a picture by its content, whatever its name says; null where it is none of ours. */
export function pictureKind(first: Uint8Array): string | null {
  const found = kinds.find(({ begins, at = 0 }) => begins.every((byte, i) => first[at + i] === byte));
  return found?.kind ?? null;
}

/** Sides of a picture scaled down so that the longer is at most so many pixels. */
export function within(width: number, height: number, most: number): { width: number; height: number } {
  const scale = Math.min(1, most / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

export type Opened = { canvas: HTMLCanvasElement } | { why: "too-large" | "no-picture" | "unread" };

/**
 * A picture drawn on to a canvas, which keeps its colours and nothing else: place, camera and time are left behind.
 * It stays on the machine.
 */
export async function openPicture(file: Blob, most_px: number): Promise<Opened> {
  if (file.size > largestPicture_bytes) return { why: "too-large" };
  if (pictureKind(new Uint8Array(await file.slice(0, 16).arrayBuffer())) === null)
    return { why: "no-picture" };
  try {
    const bitmap = await createImageBitmap(file);
    const { width, height } = within(bitmap.width, bitmap.height, most_px);
    const canvas = document.createElement("canvas");
    canvas.width = width;
    canvas.height = height;
    canvas.getContext("2d", { willReadFrequently: true })!.drawImage(bitmap, 0, 0, width, height);
    bitmap.close();
    return { canvas };
  } catch {
    return { why: "unread" };
  }
}

/** The canvas as a file of its own, without anything that the camera wrote. */
export function asBlob(canvas: HTMLCanvasElement): Promise<Blob> {
  return new Promise((done, fail) => {
    canvas.toBlob(
      (blob) => (blob ? done(blob) : fail(new Error("no picture came of the canvas"))),
      "image/jpeg",
      0.85,
    );
  });
}
