import { beginnings, minutesOf, type Plan } from './plan.ts';

const minute = 60_000;

/** How an evening stands in time. */
export interface Clock {
  /** Since it began, as `1:05` hours and minutes. */
  readonly gone: string;
  /** In words: how far ahead of the plan, or behind. */
  readonly against: string;
  readonly isLate: boolean;
  /** When the plan's last minute is over, by the clock on the wall, if all goes on as planned from here. */
  readonly ends: string;
}

/**
 * The clock at *now* for an evening that *began* then, both ms since 1970, while the item at *index* is shown: until that item ought to be over, no
 * evening is late.
 */
export function clockAt(plan: Plan, index: number, began: number, now: number): Clock {
  const gone = Math.max(0, now - began) / minute;
  const begins = beginnings(plan.items)[index] ?? minutesOf(plan.items);
  const over = begins + (plan.items[index]?.minutes ?? 0);
  const late = gone > over ? gone - over : gone < begins ? gone - begins : 0;
  const whole = Math.round(Math.abs(late));
  const left = minutesOf(plan.items) - Math.min(over, Math.max(begins, gone));
  return {
    gone: `${Math.floor(gone / 60)}:${String(Math.floor(gone % 60)).padStart(2, '0')}`,
    against: whole === 0 ? 'on time' : `${whole} min ${late > 0 ? 'behind' : 'ahead'}`,
    isLate: late >= 1,
    ends: new Date(now + left * minute).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' }),
  };
}
