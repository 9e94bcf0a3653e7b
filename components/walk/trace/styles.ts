import { css } from "lit";

/** The board that a plan lies on, and the marks on it: light on dark and dark on light, so that they show on any picture. */
export const traceStyles = css`
  :host {
    display: block;
    margin-top: 1rem;
  }
  .drop {
    display: grid;
    gap: 0.6rem;
    justify-items: start;
    padding: 1.2rem 1rem;
    border: 1.5px dashed var(--ink);
  }
  .drop.over {
    background: var(--leaf);
  }
  .press {
    position: relative;
    min-width: 48px;
    min-height: 48px;
    justify-content: center;
  }
  .press:focus-within {
    outline: 3px solid var(--tank);
    outline-offset: 3px;
  }
  .press input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    opacity: 0;
    cursor: pointer;
  }
  .press[disabled] {
    border-style: dashed;
    color: var(--grey);
  }
  .board {
    max-height: min(62svh, 34rem);
    width: 100%;
    overflow: hidden;
    border: 1.5px solid var(--ink);
    background: var(--leaf);
    cursor: crosshair;
    touch-action: none;
  }
  .sheet {
    display: block;
    overflow: hidden;
  }
  .tools {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5rem;
    margin-top: 0.6rem;
  }
  .shape {
    fill: rgb(255 255 255 / 0.28);
    stroke: #10201f;
    stroke-width: 2;
    stroke-linejoin: round;
  }
  .known {
    fill: none;
    stroke: #10201f;
    stroke-width: 2;
    stroke-dasharray: 6 4;
  }
  .halo {
    fill: none;
    stroke: #fff;
    stroke-width: 5;
    stroke-dasharray: none;
  }
  .other {
    fill: rgb(16 32 31 / 0.16);
    stroke: #fff;
    stroke-width: 1.5;
  }
  .dot {
    fill: rgb(255 255 255 / 0.6);
    stroke: #10201f;
    stroke-width: 2;
  }
  .heart {
    fill: #10201f;
  }
  .cross {
    fill: none;
    stroke: #10201f;
    stroke-width: 2;
    paint-order: stroke;
  }
  .wrong {
    margin-top: 0.5rem;
    padding-inline-start: 0.7rem;
    border-inline-start: 3px solid var(--ink);
    font-weight: 600;
  }
  p {
    margin-top: 0.4rem;
    font-size: 0.95rem;
  }
`;
