import { css } from "lit";

/** Inks and weights of every drawing. Labels are never smaller than 13 px. */
export const drawing = css`
  svg {
    display: block;
    overflow: visible;
    max-width: 100%;
    height: auto;
    font-family: var(--serif);
    font-variant-numeric: lining-nums tabular-nums;
  }
  svg text {
    fill: var(--ink);
  }
  .tick {
    font-size: 14px;
  }
  svg .tick {
    fill: var(--grey);
  }
  svg .tick.full {
    fill: var(--ink);
    font-weight: 600;
  }
  .word {
    font-size: 15px;
    font-weight: 500;
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 4px;
    stroke-linejoin: round;
  }
  svg .word.tank {
    fill: var(--tank);
  }
  svg .word.mains {
    fill: var(--mains);
  }
  svg .word.rain {
    fill: var(--rain);
  }
  .word.small {
    font-size: 14px;
  }
  .bed.small {
    font-size: 16px;
  }
  .row-name {
    font-size: 16px;
  }
  .thread-of {
    stroke: var(--ink);
    stroke-width: 1;
    stroke-dasharray: 4 3;
  }
  .soil {
    fill: var(--ink);
    fill-opacity: 0.1;
  }
  .soil-line {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.5;
    stroke-linejoin: round;
  }
  .trigger {
    stroke: var(--ink);
    stroke-width: 1;
    stroke-dasharray: 6 4;
  }
  .stroke-rain {
    fill: none;
    stroke: var(--rain);
    stroke-width: 1.1;
  }
  .bed.tiny {
    font-size: 14px;
  }
  .thread-right {
    stroke: var(--ink);
    stroke-width: 2;
  }
  .strong {
    font-weight: 650;
  }
  .hair {
    stroke: var(--hair);
    stroke-width: 1;
  }
  .ground {
    stroke: var(--ink);
    stroke-width: 1.25;
  }
  .leader {
    stroke: var(--grey);
    stroke-width: 1;
  }
  .need {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2;
    stroke-linejoin: round;
  }
  text.need {
    fill: var(--ink);
    stroke: var(--paper);
    stroke-width: 4px;
  }
  .today {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.75;
    stroke-dasharray: 0.5 4;
    stroke-linecap: round;
  }
  .span {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .span-back {
    fill: none;
    stroke: var(--paper);
    stroke-width: 4.5;
    stroke-opacity: 0.85;
  }
  .rain-edge {
    fill: none;
    stroke: var(--rain);
    stroke-width: 0.75;
  }
  .before {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.5;
    stroke-dasharray: 3 3;
  }
  .before.back {
    stroke: var(--paper);
    stroke-width: 3.5;
    stroke-dasharray: none;
    stroke-opacity: 0.85;
  }
  .could {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.25;
    stroke-dasharray: 2 3;
  }
  .edge {
    stroke-width: 1;
  }
  .edge.mains {
    stroke: var(--mains);
  }
  .edge.tank {
    stroke: var(--tank);
  }
  .edge.rain {
    stroke: var(--rain);
    stroke-width: 0.75;
  }
  .beyond {
    stroke: var(--mains);
    stroke-width: 1;
    stroke-dasharray: 1.5 3;
  }
  .lacks {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.25;
  }
  .measure {
    stroke: var(--ink);
    stroke-width: 1.25;
    fill: none;
  }
  .dot {
    fill: var(--ink);
  }
  .bar {
    fill: var(--ink);
  }
  .bar.hollow {
    fill: none;
    stroke: var(--grey);
    stroke-width: 1;
  }
  .ground.thin {
    stroke: var(--grey);
    stroke-width: 1;
  }
  .bed {
    font-size: 17px;
    font-weight: 500;
  }
  svg .bed.rain {
    fill: var(--rain);
  }
  .plot {
    fill: var(--hair);
    stroke: var(--ink);
    stroke-width: 1;
  }
  .shore {
    fill: none;
    stroke: var(--tank);
    stroke-width: 1.25;
  }
  .spill {
    stroke: var(--tank);
    stroke-width: 0.75;
  }
  .rim,
  .pipe {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.25;
  }
  .outlet {
    stroke: var(--paper);
    stroke-width: 1.5;
    stroke-dasharray: 4 3;
  }
  .outlet-word {
    font-size: 13px;
  }
  svg .outlet-word {
    fill: var(--grey);
  }
  .short-day {
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .wall {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2;
    stroke-linejoin: round;
    stroke-linecap: round;
  }
  .thread {
    stroke: var(--ink);
    stroke-width: 1;
    stroke-dasharray: 1 3;
  }
  .tape {
    fill: none;
    stroke: var(--grey);
    stroke-width: 1;
  }
  .mark {
    font-size: 14px;
    font-weight: 500;
    paint-order: stroke;
    stroke: var(--paper);
    stroke-width: 4px;
    stroke-linejoin: round;
  }
  .dot.hollow {
    fill: var(--paper);
    stroke: var(--ink);
    stroke-width: 1.75;
  }
  .thread-line {
    fill: none;
    stroke: var(--grey);
    stroke-width: 1;
  }
  .reading-line {
    stroke: var(--ink);
    stroke-width: 1;
    pointer-events: none;
  }
  @media print {
    .reading-line,
    .thread {
      display: none;
    }
    .wash {
      fill-opacity: 0;
    }
  }
`;
