import type { Survey, SurveyMeasure } from "../survey.ts";

/** Places of what may stand on one system of tanks in some set of the measures. */
export interface TankSystem {
  /** Among the survey's tanks, then those that measures add. */
  tanks: number[];
  roofs: number[];
  beds: number[];
  /** Among the survey's draws, then those that measures move on to a tank. */
  draws: number[];
}

/**
 * Tanks that are joined, or may be; each with the roofs, beds and draws that stand on it in some set. A bed or a roof
 * that a measure moves from one system to another is in both.
 */
export function tankSystems(survey: Survey, measures: readonly SurveyMeasure[]): TankSystem[] {
  const tanks = [...survey.tanks, ...measures.flatMap(({ addTank }) => addTank ?? [])];
  const draws = [...(survey.draws ?? []), ...measures.flatMap(({ addDraw }) => addDraw ?? [])];
  const system = joinedTanks(tanks);
  const names = [...new Set(tanks.map(({ id }) => system.get(id)!))];
  const placesOn = <T>(items: readonly T[], tanksOf: (item: T) => (string | undefined)[], name: string) =>
    items.flatMap((item, k) =>
      tanksOf(item).some((tank) => tank !== undefined && system.get(tank) === name) ? [k] : [],
    );
  return names.map((name) => ({
    tanks: placesOn(tanks, ({ id }) => [id], name),
    roofs: placesOn(
      survey.roofs,
      ({ id, tank }) => [
        tank,
        ...measures.flatMap(({ connectRoof }) => (connectRoof?.roof === id ? connectRoof.tank : [])),
      ],
      name,
    ),
    beds: placesOn(
      survey.beds,
      ({ id, watering }) => [
        watering.tank,
        ...measures.flatMap(({ useTank, changeWatering }) => [
          ...(useTank?.beds.includes(id) ? [useTank.tank] : []),
          ...(changeWatering?.beds.includes(id) ? [changeWatering.tank] : []),
        ]),
      ],
      name,
    ),
    draws: placesOn(draws, ({ tank }) => [tank], name),
  }));
}

/** The name of the system that each tank is of: the id of one of its tanks. */
function joinedTanks(tanks: readonly { id: string; linked?: readonly string[] }[]): Map<string, string> {
  const system = new Map(tanks.map(({ id }) => [id, id]));
  for (const { id, linked = [] } of tanks)
    for (const other of linked) {
      const [from, to] = [system.get(other), system.get(id)!];
      if (from === undefined || from === to) continue;
      for (const [tank, name] of system) if (name === from) system.set(tank, to);
    }
  return system;
}
