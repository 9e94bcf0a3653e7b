import { css } from "lit";

/** Drawings beside the fields they are drawn from: ink on hairlines, water in its ink. */
export const drawingStyles = css`
  figure,
  .tank {
    padding: 0.9rem 0 0.6rem;
  }
  figcaption {
    margin-top: 0.4rem;
    color: var(--grey);
    font-size: 0.92rem;
  }
  .skyline .strip {
    position: relative;
    max-width: 43rem;
    margin-top: 1rem;
    margin-inline-start: 2.2rem;
  }
  .skyline svg {
    display: block;
    width: 100%;
    height: 9.5rem;
    overflow: hidden;
  }
  .skyline .hair {
    stroke: var(--hair);
    stroke-width: 1;
    vector-effect: non-scaling-stroke;
  }
  .skyline .sun {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.3;
    vector-effect: non-scaling-stroke;
  }
  .skyline .winter {
    stroke-dasharray: 5 4;
  }
  .skyline .wall {
    fill: var(--grey);
    fill-opacity: 0.45;
    stroke: var(--ink);
    stroke-width: 1.5;
    vector-effect: non-scaling-stroke;
  }
  .ground {
    stroke: var(--ink);
    stroke-width: 1.5;
    vector-effect: non-scaling-stroke;
  }
  .skyline .height,
  .sun-word {
    position: absolute;
    color: var(--grey);
    font-size: 13px;
    line-height: 1;
  }
  .skyline .height {
    inset-inline-start: -2.2rem;
    transform: translateY(50%);
  }
  .sun-word {
    padding-bottom: 0.2rem;
    color: var(--ink);
    transform: translateX(-50%);
    white-space: nowrap;
  }
  .compass {
    position: relative;
    max-width: 43rem;
    height: 1.4rem;
    margin-inline-start: 2.2rem;
    font-size: 0.88rem;
  }
  .compass span {
    position: absolute;
    transform: translateX(-50%);
  }
  .compass .at-start {
    transform: none;
  }
  .compass .at-end {
    transform: translateX(-100%);
  }
  .tank svg {
    display: block;
    width: 100%;
    max-width: 26rem;
    height: auto;
    overflow: visible;
  }
  .tank .wall,
  .tank .leader {
    fill: none;
    stroke: var(--ink);
  }
  .tank .wall {
    stroke-width: 1.6;
  }
  .tank .leader {
    stroke-width: 0.8;
  }
  .tank .water {
    fill: var(--tank);
  }
  .tank .stays {
    stroke: var(--tank);
    stroke-width: 1;
  }
  .tank text {
    fill: var(--ink);
    font: inherit;
    font-size: 13px;
  }
  .outline svg {
    max-width: 100%;
    height: auto;
  }
  .outline polygon {
    fill: color-mix(in srgb, var(--ink) 7%, transparent);
    stroke: var(--ink);
    stroke-width: 1.5;
    vector-effect: non-scaling-stroke;
  }
`;
