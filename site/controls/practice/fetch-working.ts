/** What puts a problem's numbers into the steps of its working, fetched when one is asked for. */
export const fetchWorking = () => import('./working.ts');
