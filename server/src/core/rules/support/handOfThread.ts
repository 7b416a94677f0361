export type Hand = 'left' | 'right';

/** LH and RH behind the size, as ISO 965-1 and ASME B1.1 write them, or before it as the trade does. */
const MARK = /(?:^|[\s,;(-])(LH|RH)(?=$|[\s,;)-])/i;

/** The hand that a thread designation marks, for example left of `M8×1-LH`; undefined where it marks none. */
export function handInDesignation(thread: string): Hand | undefined {
  const mark = MARK.exec(thread)?.[1]?.toUpperCase();
  return mark === undefined ? undefined : mark === 'LH' ? 'left' : 'right';
}

export function otherHand(hand: Hand): Hand {
  return hand === 'left' ? 'right' : 'left';
}
