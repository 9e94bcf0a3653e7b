/** Ways of measuring: what each is called, and how it is done. */

interface WayWords {
  name: string;
  how: string;
}

export const wayWords: Readonly<Record<string, WayWords>> = {
  rectangle: { name: "Rectangle", how: "Tape the length and the width. Check that the corners look square." },
  triangle: { name: "Triangle", how: "Tape all three sides." },
  circle: { name: "Circle", how: "Tape straight across, through the middle." },
  ellipse: { name: "Ellipse", how: "Tape the longest way across and the shortest, both through the middle." },
  trapezium: {
    name: "Two parallel sides",
    how: "Tape the two sides that run alongside each other, and how far apart they are, square across.",
  },
  "l-shape": {
    name: "L-shape",
    how: "Tape the whole length and width as if no corner were missing, then the missing corner.",
  },
  "four-sides": {
    name: "Four uneven sides",
    how: "Walk round: sides A, B, C and D in order. The diagonal runs from where D meets A to where B meets C.",
  },
  offsets: {
    name: "Curved edge, even steps",
    how: "Lay the tape along a straight line. At every step from end to end measure square across to the edge. An odd number of measures is best where the edge bends.",
  },
  "offsets-uneven": {
    name: "Curved edge, uneven steps",
    how: "Lay the tape along a straight line. Where the edge changes, write how far along you are and how far across it is.",
  },
  oval: {
    name: "Oval with two straights",
    how: "Tape one straight side, and the width across between the two straights.",
  },
  path: { name: "Strip or path", how: "Tape the length along its middle, and the width in several places." },
  ring: {
    name: "Ring round a circle",
    how: "Tape from the middle to the inner edge, then the ring’s width.",
  },
  plan: {
    name: "Traced on a plan",
    how: "Set the scale by a length that you know, then mark the corners in order.",
  },
  plants: { name: "Plants one by one", how: "Count the plants. Tape the width of the leaves of several." },
  pots: { name: "Round pots", how: "Count the pots. Tape across the soil and down to the pot’s floor." },
  "raised-beds": {
    name: "Raised beds",
    how: "Count the beds. Tape length, width and depth of soil inside the walls.",
  },
  "thirst-key": { name: "Thirst by looking", how: "Answer what you can see and feel on a grown plant." },
  "transect-points": {
    name: "Mixed bed, points along a tape",
    how: "Lay a tape across the bed. At even steps along it say which planting is there. Count each.",
  },
  "transect-stretches": {
    name: "Mixed bed, stretches of tape",
    how: "Lay a tape across the bed. For each planting below it write where it begins, where it ends and its number.",
  },
  "leaf-chart": {
    name: "Leaf cover by the chart",
    how: "Look straight down on the bed, hold the chart beside it and choose the nearest picture. Do this at several spots.",
  },
  "leaf-points": {
    name: "Leaf cover by points",
    how: "Look straight down on every knot of a string grid, or at even steps along a tape. Count the points on a leaf, and all of them.",
  },
  "leaf-photograph": {
    name: "Leaf cover from a photograph",
    how: "Take it from straight above. The green is counted; check the result against the bed.",
  },
  "mulch-chart": { name: "Mulch cover by the chart", how: "As for leaves, for the ground that mulch hides." },
  "mulch-points": { name: "Mulch cover by points", how: "As for leaves, counting points on mulch." },
  "mulch-depth": {
    name: "Depth of mulch",
    how: "Push a ruler down to firm soil at five spots or more, thin ones too.",
  },
  "soil-jar": {
    name: "Soil in a jar",
    how: "Fill a third of a straight jar with soil, top up with water and a little dish soap, shake for two minutes. Mark the layer after a minute (sand) and after two hours (silt); what settles in two days is clay.",
  },
  "soil-feel": {
    name: "Soil by feel",
    how: "Wet a spoonful to putty, press a ribbon between thumb and finger.",
  },
  "soil-ring": {
    name: "Water into a ring",
    how: "Push a tin without ends three fingers deep into the soil. Pour in a measured depth and time until it is gone; repeat until two fills take about as long.",
  },
  slope: {
    name: "Slope",
    how: "Hold a level line: tape how far it runs and how far the ground has dropped.",
  },
  "skyline-fists": {
    name: "Skyline by fists",
    how: "Crouch in the middle of the bed. With your arm stretched out stack fists from eye level up to the top of each wall or tree, and read the compass at its two ends.",
  },
  "skyline-tilt": {
    name: "Skyline by tilt",
    how: "From the middle of the bed sight along the edge of the phone at the top of each wall or tree.",
  },
  "skyline-heights": {
    name: "Skyline by height and distance",
    how: "For each wall or tree write its height and how far its foot is from the middle of the bed.",
  },
  jug: {
    name: "Jug and stopwatch",
    how: "Turn the tap full on, as for watering. Time how long the jug takes; do it three times.",
  },
  "zone-meter": {
    name: "A zone at the meter",
    how: "Turn everything else off. Read the meter, run the zone for five minutes, read it again.",
  },
  "zone-meter-two": {
    name: "One outlet, then two, at the meter",
    how: "As before with one outlet open, then with a second one open as well.",
  },
  "gravity-hose": {
    name: "Hose from a tank",
    how: "At two levels of the tank or more: the water in it, how far its surface is above the hose’s end, the water caught and the time.",
  },
  pump: {
    name: "Pump",
    how: "Time a jug at its outlet. Write the tank’s water at which the pump cuts out, from the dip table.",
  },
  drips: { name: "Drips in a minute", how: "Count the drips for a whole minute, three times." },
  "leak-jug": { name: "A leak that runs", how: "Catch it in a jug and time it." },
  "catch-cans": {
    name: "Catch cans",
    how: "Set equal cans on an even grid, twenty or more. Run the sprinklers, then measure what each can caught. Wind: 0 still, 1 leaves move, 2 more.",
  },
  "habit-week": {
    name: "A week of watering",
    how: "Write the minutes watered on each day from Monday; 0 where there was none.",
  },
  "roof-pitch": {
    name: "Roof by slope and pitch",
    how: "From the ground or a plan: the length of the eave, the length up the slope and the pitch.",
  },
  "roof-rise": {
    name: "Roof by slope and rise",
    how: "From the ground or a plan: the length of the eave, the length up the slope and how far the ridge is above the eave.",
  },
  "tank-upright": {
    name: "Upright round tank",
    how: "Across inside, and the depth: to the overflow for what it holds, to the water for what is in it, to the outlet for what cannot be drawn.",
  },
  "tank-girth": {
    name: "Upright round tank by its girth",
    how: "Tape round it, the wall’s thickness, and the depth.",
  },
  "tank-box": { name: "Tank with square corners", how: "Inner length and width, and the depth." },
  "tank-lying": { name: "Round tank that lies", how: "Across and along inside, and the depth on a stick." },
  "tank-cone": {
    name: "Tank wider at one end",
    how: "Across at the floor and at the top, its height, and the depth.",
  },
  cistern: {
    name: "Toilet cistern",
    how: "With the lid off, inside: length, width, and how far the water drops in a flush. Count the flushes of a day.",
  },
  "first-flush": {
    name: "First-flush diverter",
    how: "Across inside its pipe, the pipe’s length, and the roof that it serves.",
  },
};

/** Measuring by paces, before the name of a shape. */
export const pacedWords: WayWords = {
  name: "By paces",
  how: "Count your paces over a length that was taped, then pace the shape the same way.",
};
