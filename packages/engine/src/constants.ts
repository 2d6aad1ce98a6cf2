/** Standard acceleration of free fall, ISO 80000-3 [m/s²]. */
export const GRAVITY = 9.80665;
/** Rate at which force signals are recorded, for the CFC 60 filter [1/s]. */
export const SIGNAL_RATE = 10_000;
