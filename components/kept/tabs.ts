/** Which tabs of this site are open: each holds a lock of its own name for as long as it lives. */
export interface Tabs {
  /** This tab's name. */
  own: string;
  isOpen(tab: string): Promise<boolean>;
}

const prefix = "grounds-tab-";

/** Takes this tab's lock. Where the browser has no locks, no other tab counts as open. */
export function holdTab(locks: LockManager | undefined, own: string): Tabs {
  void locks?.request(`${prefix}${own}`, () => new Promise(() => {}));
  return {
    own,
    isOpen: async (tab) => {
      const held = (await locks?.query())?.held ?? [];
      return held.some(({ name }) => name === `${prefix}${tab}`);
    },
  };
}
