import { el, type Html } from '../sheet/htmlText';

/** The hatchings that the styles name: of what is in place on the bench, and of a step that is left out. */
export function patterns(): Html {
  return el('defs', {}, hatch('walk-hatch', 'hatch-line', 4.5, 45), hatch('walk-blank', 'blank-line', 7, -45));
}

function hatch(id: string, name: string, size: number, angle: number): Html {
  const attributes = {
    id,
    width: size,
    height: size,
    patternUnits: 'userSpaceOnUse',
    patternTransform: `rotate(${angle})`,
  };
  return el('pattern', attributes, el('path', { class: name, d: `M0 0V${size}` }));
}
