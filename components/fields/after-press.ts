let isPressed = false;

const press = () => {
  isPressed = true;
};
const release = () => {
  isPressed = false;
};

addEventListener("pointerdown", press, { capture: true, passive: true });
addEventListener("pointerup", release, { capture: true, passive: true });
addEventListener("pointercancel", release, { capture: true, passive: true });

/**
 * Runs now, or once the pointer that is down is up and its click is over. A line is left when the pointer goes down
 * elsewhere: were what is wrong with it shown at once, what is clicked would move away from under the pointer.
 */
export function afterPress(run: () => void): void {
  if (!isPressed) {
    run();
    return;
  }
  const wait = () => {
    removeEventListener("pointerup", wait, true);
    removeEventListener("pointercancel", wait, true);
    setTimeout(run);
  };
  addEventListener("pointerup", wait, true);
  addEventListener("pointercancel", wait, true);
}
