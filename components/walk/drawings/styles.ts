import { css } from "lit";

/** Ink of the walk's drawings: what is measured is a strong line, the ground is paper, water has its own ink. */
export const inkStyles = css`
  figure {
    margin-top: 1rem;
  }
  figcaption {
    margin-top: 0.3rem;
    color: var(--grey);
    font-size: 0.95rem;
  }
  svg {
    display: block;
    max-width: 100%;
    height: auto;
    overflow: visible;
    font-family: var(--serif);
    font-variant-numeric: lining-nums tabular-nums;
  }
  svg text {
    fill: var(--ink);
    font-size: 15px;
  }
  svg text.small {
    fill: var(--grey);
    font-size: 13.5px;
  }
  .ink {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.6;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .ink.thin {
    stroke-width: 1;
  }
  .ink.strong {
    stroke-width: 2.6;
  }
  .ink.dashed {
    stroke-dasharray: 4 4;
  }
  .hair {
    stroke: var(--hair);
    stroke-width: 1;
    fill: none;
  }
  .solid {
    fill: var(--ink);
    stroke: none;
  }
  .leaf {
    fill: var(--leaf);
    stroke: var(--ink);
    stroke-width: 1.4;
    stroke-linejoin: round;
  }
  .shade {
    fill: color-mix(in srgb, var(--ink) 16%, transparent);
    stroke: none;
  }
  .ground {
    fill: color-mix(in srgb, var(--ink) 9%, var(--paper));
    stroke: none;
  }
  .tank-water {
    fill: var(--tank);
    stroke: none;
  }
  .tank-line {
    fill: none;
    stroke: var(--tank);
    stroke-width: 2;
  }
  svg text.tank {
    fill: var(--tank);
    font-weight: 600;
  }
  .mains-line {
    fill: none;
    stroke: var(--mains);
    stroke-width: 2;
  }
  .area {
    fill: color-mix(in srgb, var(--ink) 8%, var(--paper));
    stroke: var(--ink);
    stroke-width: 1.6;
    stroke-linejoin: round;
  }
  .area.sketch {
    fill: none;
    stroke: var(--grey);
    stroke-dasharray: 5 4;
  }
  .area.open {
    fill: none;
  }
  .area.cut {
    fill: none;
    stroke-dasharray: 2 4;
  }
  .class {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1;
    stroke-linejoin: round;
  }
  .class.here {
    fill: color-mix(in srgb, var(--ink) 14%, transparent);
    stroke-width: 2;
  }
  svg text.texture {
    fill: var(--grey);
    font-size: 13px;
    letter-spacing: -0.02em;
  }
  svg text.texture.here {
    fill: var(--ink);
    font-weight: 650;
  }
  .wall {
    fill: color-mix(in srgb, var(--ink) 26%, var(--paper));
    stroke: var(--ink);
    stroke-width: 1;
  }
  .outline {
    fill: none;
    stroke: var(--grey);
    stroke-width: 1;
  }
  svg text.sun {
    font-size: 13.5px;
  }
  .rain {
    fill: none;
    stroke: var(--rain);
    stroke-width: 1.2;
  }
  .length {
    stroke: transparent;
    stroke-width: 2;
  }
  .length.inside {
    stroke: var(--grey);
    stroke-width: 1;
    stroke-dasharray: 2 3;
  }
  .length.now {
    stroke: var(--ink);
    stroke-width: 4;
    stroke-dasharray: none;
    stroke-linecap: round;
  }
  text.measure {
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 4px;
    stroke-linejoin: round;
  }
  text.measure.now {
    font-weight: 650;
  }
`;
