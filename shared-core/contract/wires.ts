/** The names under which the page and the main process send to each other. */
export const CALL_CHANNEL = 'ringbound:call';
export const MENU_CHANNEL = 'ringbound:menu';
