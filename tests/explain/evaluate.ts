import type { Expression } from "../../src/explain/working.ts";

/**
 * Works out a formula as it is shown: + − × ÷ ^, brackets, √ min max exp ln sin cos tan arccos round roundup rounddown π. One that is Σ, or
 * Σ of a letter, adds its inputs. A reader of formulas of its own, so that it cannot share a slip with the engine.
 */
export function evaluate({ template, inputs }: Expression): number {
  if (template.startsWith("Σ")) return Object.values(inputs).reduce((sum, value) => sum + value, 0);
  const tokens = template.match(/\{[^}]+\}|\d+(?:\.\d+)?|[a-z]+|[+−×÷^(),√π]/g) ?? [];
  let at = 0;
  const peek = () => tokens[at];
  const take = (wanted?: string) => {
    const token = tokens[at++];
    if (token === undefined || (wanted !== undefined && token !== wanted))
      throw new Error(`"${template}": ${wanted ?? "a number"} wanted, ${token ?? "the end"} found`);
    return token;
  };
  const sum = (): number => {
    let value = product();
    while (peek() === "+" || peek() === "−") value = take() === "+" ? value + product() : value - product();
    return value;
  };
  const product = (): number => {
    let value = power();
    while (peek() === "×" || peek() === "÷") value = take() === "×" ? value * power() : value / power();
    return value;
  };
  const power = (): number => {
    if (peek() === "−") {
      take();
      return -power();
    }
    const base = atom();
    if (peek() !== "^") return base;
    take();
    return base ** power();
  };
  const list = (): number[] => {
    take("(");
    const values = [sum()];
    while (peek() === ",") {
      take();
      values.push(sum());
    }
    take(")");
    return values;
  };
  const functions: Readonly<Record<string, (...values: number[]) => number>> = {
    "√": Math.sqrt,
    min: Math.min,
    max: Math.max,
    exp: Math.exp,
    ln: Math.log,
    sin: Math.sin,
    cos: Math.cos,
    tan: Math.tan,
    arccos: Math.acos,
    round: Math.round,
    // but for noise in the last digits
    roundup: (x) => Math.ceil(x! - 1e-9),
    rounddown: Math.floor,
  };
  const atom = (): number => {
    const token = peek();
    if (token === "(") return list()[0]!;
    take();
    if (token === "π") return Math.PI;
    if (token?.startsWith("{")) {
      const value = inputs[token.slice(1, -1)];
      if (value === undefined) throw new Error(`"${template}": no ${token} among the inputs`);
      return value;
    }
    const apply = functions[token ?? ""];
    if (apply) return apply(...list());
    const number = Number(token);
    if (Number.isNaN(number)) throw new Error(`"${template}": a number wanted, ${token} found`);
    return number;
  };
  const value = sum();
  if (at < tokens.length) throw new Error(`"${template}": ${tokens[at]} is left over`);
  return value;
}
