/** What an unknown is called, from its path. @param bed the name of the bed that it speaks of */
export function unknownName(at: string, bed: string | null): string {
  if (at === "weather") return "Which year it will be";
  if (at === "site.soil") return "The soil";
  if (at === "site.rainShed") return "Rain that runs off the beds";
  if (at.startsWith("plants."))
    return `${kindName(at.split(".")[1]!)}: ${plantFigures[at.split(".")[2] ?? ""] ?? "how a thin cover drinks"}`;
  if (at.startsWith("soils.")) return `What ${at.split(".")[1]} holds`;
  if (at.startsWith("methods.")) return `How much of the water by ${at.split(".")[1]} reaches the roots`;
  if (at.startsWith("mulches.")) return `How much ${at.split(".")[1]} keeps in`;
  if (at.startsWith("roofs.")) return `How much rain a ${at.split(".")[1]} roof sends on`;
  if (at.endsWith("leafCover")) return `Leaf cover of ${bed}`;
  if (at.endsWith("flow_L_min")) return `Flow on to ${bed}`;
  return bed === null ? at : `How thirsty the plants of ${bed} are`;
}

/** A kind of plant as a person says it. */
function kindName(kind: string): string {
  if (kind === "thinCover" || kind === "bareGround") return "Plants far apart";
  const lawn = /^lawn-(\w+)$/.exec(kind)?.[1];
  return capital(lawn ? `${lawn}-season lawn` : kind.replace("-", " "));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const plantFigures: Readonly<Record<string, string>> = {
  rootDepth_m: "how deep the roots reach",
  depletionFraction: "how dry they let the soil get",
  height_m: "how tall they are",
};

/** What narrows an unknown, and what that takes. */
export function unknownAdvice(at: string): string {
  if (at === "weather") return "No measuring narrows that.";
  if (at === "site.soil" || at.startsWith("soils."))
    return "A jar of soil in water, read after 1 day, narrows it.";
  if (at.endsWith("rootDepth_m")) return "One spade hole narrows it, 10 minutes.";
  if (at.endsWith("flow_L_min")) return "A jug and a stopwatch narrow it, 2 minutes.";
  if (at.endsWith("leafCover")) return "Two people with the charts narrow it, 5 minutes.";
  if (at.startsWith("methods.")) return "A catch-can test narrows it, 1 hour with 16 cups.";
  if (at.startsWith("roofs.")) return "A dipped tank before and after 1 good rain narrows it.";
  if (at.startsWith("beds[")) return "A second look with the thirst key narrows it, 5 minutes.";
  return "It can hardly be measured on the spot (0 of our tests do).";
}
