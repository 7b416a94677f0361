import type { Part } from '../../model/generated/types';
import type { ItemRange } from '../../syntax/node';
import type { SealCase } from '../../workings/sealCase';
import { shares } from '../../workings/sealWorking';

/** What else the groove does to the ring: `; it is stretched by 1.2 % to 1.4 % and fills 70 % to 82 % of the groove`. */
export function besideSqueeze({ stretch, fill, floor }: SealCase): string {
  const stretched =
    stretch === undefined || floor !== 'inside' ? [] : [`is stretched by ${shares(stretch.least, stretch.greatest)}`];
  const filled = fill === undefined ? [] : [`fills ${shares(fill.least, fill.greatest)} of the groove`];
  const both = [...stretched, ...filled].join(' and ');
  return both === '' ? '' : `; it ${both}`;
}

/** The section, where it is that the depth is compared with. */
export function sealRelated({ section }: Part): { readonly range: ItemRange; readonly message: string }[] {
  return section === undefined ? [] : [{ range: section.node, message: `The section is ${section.text.trim()}` }];
}
