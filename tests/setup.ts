import fc from "fast-check";

/** Properties are tried on the same cases at every run; FC_SEED names others to explore. */
fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 20_260) });
