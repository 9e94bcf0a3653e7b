import { css } from "lit";

/** A row of small pictures that breaks where it must; the chosen one is boxed by hand. */
export const yearsStyles = css`
  fieldset {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(7rem, 1fr));
    gap: 0.9rem 1.1rem;
    min-width: 0;
    margin: 0.9rem 0 0.5rem;
    padding: 0;
    border: 0;
  }
  label {
    position: relative;
    display: block;
    cursor: pointer;
  }
  input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }
  .picture {
    display: flex;
    flex-direction: column;
    padding: 0.35rem 0.4rem 0.3rem;
    border: 1px solid transparent;
    line-height: 1.3;
  }
  label:hover .picture {
    background: color-mix(in srgb, var(--ink) 6%, transparent);
  }
  :checked + .picture {
    border-color: var(--ink);
  }
  :focus-visible + .picture {
    outline: 3px solid var(--tank);
    outline-offset: 2px;
  }
  svg {
    display: block;
    width: 100%;
    height: 2.75rem;
    border-top: 1px solid var(--ink);
    border-bottom: 1.25px solid var(--ink);
  }
  .water {
    fill: var(--tank);
  }
  .name {
    margin-top: 0.25rem;
    font-size: 0.95rem;
  }
  :checked + .picture .name {
    font-weight: 650;
  }
  .kind,
  .days {
    color: var(--grey);
    font-size: 0.85rem;
    font-weight: 400;
  }
  @media print {
    fieldset {
      grid-template-columns: repeat(6, 1fr);
    }
  }
`;
