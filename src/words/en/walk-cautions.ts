/** Cautions where the hand is, by the part of the walk. Local rules and the adult in charge come first. */
export const walkCautions: Readonly<Record<string, readonly string[]>> = {
  always: [
    "An adult is in sight the whole time. Stay with your group.",
    "Hat, sunscreen, water to drink, closed shoes.",
    "Keep away from roads and car parks. Nobody steps into traffic to hold a tape.",
    "Leave tools, machines and sprays to the keeper.",
  ],
  areas: ["Walk round beds, not through them. Look up before you walk backwards with a tape."],
  thirst: ["Touch leaves, never taste them. Some sting, scratch or irritate: gloves on, then wash hands."],
  cover: ["Photograph the ground, not people."],
  soil: [
    "Gloves for soil; cover cuts, and wash hands before eating.",
    "Do not breathe in the dust of dry potting mix or compost: it can carry legionella. Wet it first.",
    "Ask before you dig: cables and pipes lie in the ground.",
  ],
  shade: ["Never look at the sun, nor sight a phone or a fist along it."],
  water: [
    "Tap and hose only with the keeper’s leave. Mop up: wet paving is slippery.",
    "Do not drink from hoses or tanks, and keep out of the spray of water that stood warm.",
    "Pumps and their plugs are for a licensed electrician; do not touch them with wet hands.",
    "Changes to pipes and backflow protection are a licensed plumber’s work.",
  ],
  tanks: [
    "No ladders and no roofs for groups: measure from the ground or on a plan.",
    "Never open, climb or enter a tank. An adult dips it where a hand reaches the opening from the ground, and closes the screen again.",
    "Tank water is not for drinking unless it is treated and approved.",
    "Keep screens whole, or mosquitoes breed in the tank.",
    "A cistern’s lid is heavy and breaks: an adult lifts it.",
  ],
};
