import "./measure.ts";
import "./thirst.ts";
import "./choice.ts";
import "./habit.ts";
import "./heads.ts";
import "./tank-use.ts";
