/**
 * Says on a terminal that work goes on, and takes the line away again when it is done; anything that ends
 * within the second is gone before it is read. Says nothing where no terminal listens.
 */
export function whileWorking<T>(words: string, work: () => T): T {
  const terminal = process.stderr;
  if (!terminal.isTTY) return work();
  terminal.write(words);
  try {
    return work();
  } finally {
    terminal.write("\r\u001b[2K");
  }
}
