/** Event of the window that calls the rescue. */
export const RESCUE = 'trammel:rescue';
