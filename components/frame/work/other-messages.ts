/** Lets what was asked meanwhile be heard. */
export function otherMessages(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
