import { createSignal } from 'solid-js';
import { WORTH } from '../../diagnosis/worth';

/** What an hour is worth to the person, in the money that costs are in: for as long as the page stays open. */
export const [worth, setWorth] = createSignal(WORTH);

/** An amount in whole units of whatever money the person reckons in. */
export const money = (amount: number): string => String(Math.round(amount));
