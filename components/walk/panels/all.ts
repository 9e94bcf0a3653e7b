import "./measure.ts";
import "./thirst.ts";
