import { CHANGE_CLASSES } from '../review/change';
import { CLASS_TITLES } from '../review/changeWords';
import type { Reviewed } from './reviewed';

/** The whole review in a line. */
export function sumLine({ changes, findings }: Reviewed): string {
  const counted = CHANGE_CLASSES.flatMap((one) => {
    const count = changes.filter((change) => change.class === one).length;
    return count === 0 ? [] : [`${count} ${CLASS_TITLES[one].toLowerCase()}`];
  });
  const sum = counted.length === 0 ? 'Nothing differs' : counted.join(', ');
  const { added, gone, still } = findings;
  return `${sum}; findings: ${added.length} new, ${gone.length} gone, ${still.length} still there`;
}
